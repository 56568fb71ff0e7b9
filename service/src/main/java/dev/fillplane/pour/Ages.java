package dev.fillplane.pour;

/**
 * The oldest of a run, from first water.
 *
 * @param edge when it is met
 * @param batch when it is placed
 * @param roll when what a batch covers is spike-rolled
 */
record Ages(double edge, double batch, double roll) {

  static Ages of(LaidFloor floor, BatchTimes times) {
    double batch = 0;
    double roll = 0;
    for (int i = 0; i < floor.batches(); i++) {
      double firstWater = times.firstWater(i);
      batch = Math.max(batch, times.placed(i) - firstWater);
      roll = Math.max(roll, times.rolled(i) - firstWater);
    }
    return new Ages(floor.meetings().oldest(times), batch, roll);
  }

  /**
   * The age that decides. Edges and batches keep the reserve, rolling only has to be done before
   * the healing ends.
   */
  double deciding() {
    return Math.max(Math.max(edge, batch), (1 - FloorPour.RESERVE) * roll);
  }
}
