package dev.fillplane.pour;

/** The floor: what is poured, raked and rolled of its batches. */
final class PouringPlace {

  private final LaidFloor floor;
  private final double setUp;
  private final int[] bucketsPoured;
  private final int[] bucketsBack;
  private final int[] forTheRoller;
  private final double[] placedAt;
  private final double[] rolledAt;

  private int freeHoses;

  // Batches that have come so far, and buckets taken of the one that is carried.
  private int carried;
  private int bucketsTaken;
  private int placed;
  private int raking;
  private int raked;
  private int rolling;
  private int rolled;

  PouringPlace(LaidFloor floor, Way way, Crew crew) {
    this.floor = floor;
    setUp = crew.betweenBays();
    bucketsPoured = new int[floor.batches()];
    bucketsBack = new int[floor.batches()];
    forTheRoller = new int[floor.batches()];
    placedAt = new double[floor.batches()];
    rolledAt = new double[floor.batches()];
    freeHoses = crew.pumps() ? 1 : way.people();
  }

  boolean canCarry(int mixed, double now) {
    return carried < mixed && freeHoses > 0 && now >= opens();
  }

  /** When the bay of the next batch is set up; infinite while the bay before it is poured. */
  double opens() {
    if (setUp == 0 || carried == floor.batches() || !floor.opensBay(carried)) {
      return 0;
    }
    return placed < carried ? Double.POSITIVE_INFINITY : placedAt[carried - 1] + setUp;
  }

  int takeBucket() {
    freeHoses--;
    int batch = carried;
    bucketsTaken++;
    if (bucketsTaken == floor.bags(batch)) {
      bucketsTaken = 0;
      carried++;
    }
    return batch;
  }

  /** Whether all of the batch is on the floor with this bucket. */
  boolean isPoured(int batch, double now) {
    bucketsPoured[batch]++;
    boolean whole = bucketsPoured[batch] == floor.bags(batch);
    if (whole) {
      placedAt[batch] = now;
      placed++;
    }
    return whole;
  }

  /** Whether the barrel of the batch is back with this bucket. */
  boolean bucketIsBack(int batch) {
    freeHoses++;
    bucketsBack[batch]++;
    return bucketsBack[batch] == floor.bags(batch);
  }

  boolean canRake() {
    return raking < placed;
  }

  int beginRaking() {
    return raking++;
  }

  void isRaked(int batch) {
    forTheRoller[raked] = batch;
    raked++;
  }

  boolean canRoll() {
    return rolling < raked;
  }

  int beginRolling() {
    return forTheRoller[rolling++];
  }

  void isRolled(int batch, double now) {
    rolledAt[batch] = now;
    rolled++;
  }

  boolean allPlaced() {
    return placed == floor.batches();
  }

  boolean allRolled() {
    return rolled == floor.batches();
  }

  double placedAt(int batch) {
    return placedAt[batch];
  }

  double rolledAt(int batch) {
    return rolledAt[batch];
  }
}
