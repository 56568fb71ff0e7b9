package dev.fillplane.pour;

/**
 * The pour of all bays by one crew.
 *
 * @param floor the batches in the order of the pour
 * @param crew who pours
 * @param way who of them works with what
 * @param run how it went
 * @param ages the oldest of it
 * @param healing how long edges heal
 */
record FloorPour(LaidFloor floor, Crew crew, Way way, CrewRun run, Ages ages, Healing healing) {

  /** Share of the healing time that is kept back (common practice, no source). */
  static final double RESERVE = 0.25;

  FloorPour(LaidFloor floor, Crew crew, Way way, CrewRun run, Healing healing) {
    this(floor, crew, way, run, Ages.of(floor, run), healing);
  }

  Verdict verdict() {
    return healing.verdict(ages.deciding());
  }

  boolean holds() {
    return verdict() == Verdict.HOLDS;
  }

  /** Whether every edge leaves the reserve, however hot it is. */
  boolean inTime() {
    return ages.deciding() <= healing.limit();
  }

  /** The age that decides as a share of the healing time. */
  double strain() {
    return healing.time() > 0 ? ages.deciding() / healing.time() : Double.MAX_VALUE;
  }

  /** From the start of the work to the last batch on the floor. */
  double duration() {
    return floor.batches() == 0 ? 0 : run.placed(floor.batches() - 1);
  }
}
