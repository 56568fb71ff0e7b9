package dev.fillplane.pour;

/** Tap, barrels and mixers, or the pump: what is measured and mixed of the batches of a floor. */
final class MixingPlace {

  private final LaidFloor floor;
  private final TaskTimes times;
  private final double setUp;
  private final double apart;
  private final double[] mixStart;

  private int freeMixers;
  private int emptyBarrels;
  private int fullBarrels;
  private boolean freeTap = true;

  // Batches measured, begun to be mixed, and mixed so far.
  private int measured;
  private int begun;
  private int mixed;

  MixingPlace(LaidFloor floor, TaskTimes times, Way way, Crew crew) {
    this.floor = floor;
    this.times = times;
    setUp = crew.betweenBays();
    apart = times.mixing(crew.bagsPerBatch()) / way.mixers();
    mixStart = new double[floor.batches()];
    freeMixers = way.mixers();
    // A pump doses its water itself.
    fullBarrels = Math.min(crew.pumps() ? floor.batches() : way.preFilled(), floor.batches());
    emptyBarrels = Math.max(0, way.barrels() - fullBarrels);
    measured = fullBarrels;
  }

  boolean canMeasure() {
    return measured < floor.batches() && freeTap && emptyBarrels > 0;
  }

  int beginMeasuring() {
    freeTap = false;
    emptyBarrels--;
    return measured++;
  }

  void isMeasured() {
    freeTap = true;
    fullBarrels++;
  }

  boolean canMix(double now) {
    return begun < floor.batches() && freeMixers > 0 && fullBarrels > 0 && now >= opens();
  }

  /** When the next batch may be begun: the mixers run one after the other, evenly apart. */
  double opens() {
    return begun == 0 ? 0 : Math.max(mixStart[begun - 1] + apart, bayOpens());
  }

  /** So that the first batch of a bay is ready when the bay is; 0 if nothing is to be set up. */
  double bayOpens() {
    if (setUp == 0 || begun == floor.batches() || !floor.opensBay(begun)) {
      return 0;
    }
    double ready = mixStart[begun - 1] + times.mixing(floor.bags(begun - 1));
    return ready + times.toFloor() + setUp - times.mixing(floor.bags(begun));
  }

  int beginMixing(double now) {
    freeMixers--;
    fullBarrels--;
    mixStart[begun] = now;
    return begun++;
  }

  void isMixed() {
    freeMixers++;
    mixed++;
  }

  void barrelIsBack() {
    emptyBarrels++;
  }

  int mixed() {
    return mixed;
  }

  /** What those wait for who have nothing to do, but for breaks. */
  Stage lacks() {
    if (begun == floor.batches() || freeMixers == 0 || fullBarrels > 0) {
      return Stage.MIXING;
    }
    return freeTap ? Stage.BARRELS : Stage.WATER;
  }

  /** When the mixing of a batch begins, with opening its bags. */
  double mixStart(int batch) {
    return mixStart[batch];
  }
}
