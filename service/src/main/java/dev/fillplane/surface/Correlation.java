package dev.fillplane.surface;

/**
 * Correlation of the floor at two places by their distance on plan, for one {@link VariogramShape}
 * and range.
 *
 * <p>{@link #fill} reads the exponential and the Matern shape from a table of cubics, which agrees
 * with {@link #at} to 5e-11 and takes less than half the time; the other shapes are exact there
 * too.
 */
final class Correlation {

  private static final double ROOT_3 = Math.sqrt(3);

  private final VariogramShape shape;
  private final double range;

  Correlation(VariogramShape shape, double range) {
    this.shape = shape;
    this.range = range;
  }

  /** The correlation at {@code distance}. */
  double at(double distance) {
    return rho(shape, distance / range);
  }

  /**
   * Writes to {@code out} the correlations of one spot with the places {@code from} to before
   * {@code to}.
   */
  void fill(double spotX, double spotY, double[] x, double[] y, int from, int to, double[] out) {
    for (int i = from; i < to; i++) {
      double dx = x[i] - spotX;
      double dy = y[i] - spotY;
      out[i] = dx * dx + dy * dy;
    }
    switch (shape) {
      case SPHERICAL -> spherical(out, from, to);
      case EXPONENTIAL -> Tables.EXPONENTIAL.replace(out, from, to, range);
      case GAUSSIAN -> gaussian(out, from, to);
      case MATERN_3_2 -> Tables.MATERN_3_2.replace(out, from, to, range);
    }
  }

  private void spherical(double[] squares, int from, int to) {
    for (int i = from; i < to; i++) {
      double t = Math.min(1, Math.sqrt(squares[i]) / range);
      squares[i] = 1 - t * (1.5 - 0.5 * t * t);
    }
  }

  private void gaussian(double[] squares, int from, int to) {
    for (int i = from; i < to; i++) {
      squares[i] = Math.exp(-squares[i] / (range * range));
    }
  }

  static double rho(VariogramShape shape, double t) {
    return switch (shape) {
      case SPHERICAL -> t >= 1 ? 0 : 1 - t * (1.5 - 0.5 * t * t);
      case EXPONENTIAL -> Math.exp(-t);
      case GAUSSIAN -> Math.exp(-t * t);
      case MATERN_3_2 -> (1 + ROOT_3 * t) * Math.exp(-ROOT_3 * t);
    };
  }

  /** Made at first use, then never changed. */
  private static final class Tables {
    static final CorrelationTable EXPONENTIAL =
        new CorrelationTable(VariogramShape.EXPONENTIAL, t -> -Math.exp(-t));
    static final CorrelationTable MATERN_3_2 =
        new CorrelationTable(VariogramShape.MATERN_3_2, t -> -3 * t * Math.exp(-ROOT_3 * t));
  }
}
