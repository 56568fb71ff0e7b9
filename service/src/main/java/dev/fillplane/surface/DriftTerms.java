package dev.fillplane.surface;

/**
 * The terms of a drift about the centre of the spots: 1, and for a plane also x and y in parts of
 * the extent, so that no term outweighs the others.
 *
 * @param count 1 for a constant, 3 for a plane
 * @param extent length that is one unit; positive
 */
record DriftTerms(int count, double extent) {

  static DriftTerms of(Drift drift, double extent) {
    return new DriftTerms(drift == Drift.LINEAR ? 3 : 1, extent);
  }

  /** Term {@code k} at a place. */
  double at(int k, double x, double y) {
    return switch (k) {
      case 0 -> 1;
      case 1 -> x / extent;
      default -> y / extent;
    };
  }

  /** One column of values at the places for each term. */
  double[][] columns(double[] x, double[] y) {
    double[][] columns = new double[count][x.length];
    for (int k = 0; k < count; k++) {
      for (int i = 0; i < x.length; i++) {
        columns[k][i] = at(k, x[i], y[i]);
      }
    }
    return columns;
  }
}
