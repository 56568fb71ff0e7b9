package dev.fillplane.depth;

/** The residuals of all realisations in one coarse cell, with their ends. */
record ResidualRow(double[] values, double lowest, double highest) {

  static ResidualRow of(double[] values) {
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      lowest = Math.min(lowest, value);
      highest = Math.max(highest, value);
    }
    return new ResidualRow(values, lowest, highest);
  }
}
