package dev.fillplane.target;

/**
 * The plane of least fill where nothing is ground: lowest at the centroid of the rooms, with the
 * minimum depth over all high points, within all bands, not steeper than allowed; of several such
 * the least steep. Nowhere being below the floor it fills its height at the centroid times the
 * area.
 *
 * @see PlaneProgram
 */
final class LeastFillPlane {

  private LeastFillPlane() {}

  /** Finds it with a program whose limits can be kept. */
  static Plane find(PlaneProgram program) {
    double lowest = Unknown.ELEVATION.in(program.settle(Unknown.ELEVATION));
    program.atMost(Unknown.ELEVATION, lowest + PlaneProgram.TOLERANCE);
    double[] best = program.settle(Unknown.STEEPNESS);
    return program.scale().plane(best[0], best[1], best[2]);
  }
}
