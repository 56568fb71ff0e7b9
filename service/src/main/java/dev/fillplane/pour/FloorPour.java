package dev.fillplane.pour;

/**
 * The pour of all bays by one crew.
 *
 * @param floor the batches in the order of the pour
 * @param crew who pours
 * @param way who of them works with what
 * @param run how it went
 * @param ages the oldest of it
 * @param healingTime from first water until an edge no longer closes
 */
record FloorPour(LaidFloor floor, Crew crew, Way way, CrewRun run, Ages ages, double healingTime) {

  /** Share of the healing time that is kept back (common practice, no source). */
  static final double RESERVE = 0.25;

  FloorPour(LaidFloor floor, Crew crew, Way way, CrewRun run, double healingTime) {
    this(floor, crew, way, run, Ages.of(floor, run), healingTime);
  }

  Verdict verdict() {
    return verdict(ages.deciding(), healingTime);
  }

  static Verdict verdict(double age, double healingTime) {
    if (age <= (1 - RESERVE) * healingTime) {
      return Verdict.HOLDS;
    }
    return age <= healingTime ? Verdict.TIGHT : Verdict.BREAKS;
  }

  boolean holds() {
    return verdict() == Verdict.HOLDS;
  }

  /** The age that decides as a share of the healing time. */
  double strain() {
    return healingTime > 0 ? ages.deciding() / healingTime : Double.MAX_VALUE;
  }

  /** From the start of the work to the last batch on the floor. */
  double duration() {
    return floor.batches() == 0 ? 0 : run.placed(floor.batches() - 1);
  }
}
