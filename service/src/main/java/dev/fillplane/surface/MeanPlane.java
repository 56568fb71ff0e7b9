package dev.fillplane.surface;

/**
 * The least-squares plane of some points, and how these spread on plan.
 *
 * @param x middle of the points
 * @param y middle of the points
 * @param elevation mean elevation
 * @param slopeX rise along x
 * @param slopeY rise along y
 * @param xx mean square of x about the middle
 * @param xy mean product of both
 * @param yy mean square of y about the middle
 */
record MeanPlane(
    double x,
    double y,
    double elevation,
    double slopeX,
    double slopeY,
    double xx,
    double xy,
    double yy) {

  /** The plane of points that are not all on a line. */
  static MeanPlane of(double[] x, double[] y, double[] z) {
    int n = x.length;
    double middleX = mean(x);
    double middleY = mean(y);
    double mean = mean(z);
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double xz = 0;
    double yz = 0;
    for (int i = 0; i < n; i++) {
      double dx = x[i] - middleX;
      double dy = y[i] - middleY;
      double dz = z[i] - mean;
      xx += dx * dx;
      xy += dx * dy;
      yy += dy * dy;
      xz += dx * dz;
      yz += dy * dz;
    }
    double determinant = xx * yy - xy * xy;
    double slopeX = (xz * yy - yz * xy) / determinant;
    double slopeY = (yz * xx - xz * xy) / determinant;
    return new MeanPlane(middleX, middleY, mean, slopeX, slopeY, xx / n, xy / n, yy / n);
  }

  /** About the first value, so that equal values have exactly that mean. */
  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value - values[0];
    }
    return values[0] + sum / values.length;
  }

  /** Its elevation at a position. */
  double at(double atX, double atY) {
    return elevation + slopeX * (atX - x) + slopeY * (atY - y);
  }

  /**
   * Root of the inverse of the spread, as its rows: {@code (u, v)} of a position of unit spread.
   */
  double[] spread(double atX, double atY) {
    double u = (atX - x) / Math.sqrt(xx);
    double across = yy - xy * xy / xx;
    double v = (atY - y - xy / xx * (atX - x)) / Math.sqrt(across);
    return new double[] {u, v};
  }
}
