package dev.fillplane.surface;

/** The floor between the readings. Immutable and safe to share. */
public interface Surface {

  /** The most likely elevation of the floor at a position; finite everywhere. */
  double elevation(double x, double y);

  /** Standard deviation of the floor (not of a reading) about {@link #elevation}. */
  double deviation(double x, double y);

  /**
   * The most likely elevations at many positions; the same numbers as one by one, but a surface may
   * find them faster together.
   *
   * @param x one coordinate for each position
   * @param y as many
   */
  default double[] elevations(double[] x, double[] y) {
    double[] elevations = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      elevations[i] = elevation(x[i], y[i]);
    }
    return elevations;
  }

  /** {@link #deviation} at many positions, under the same terms. */
  default double[] deviations(double[] x, double[] y) {
    double[] deviations = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      deviations[i] = deviation(x[i], y[i]);
    }
    return deviations;
  }
}
