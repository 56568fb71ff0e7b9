package dev.fillplane.surface;

/**
 * How unsure the volume over some nodes is, and what readings at them would change of that. With C
 * the covariance of the floor at the nodes and a their wet areas, the variance of the volume is
 * {@code a'Ca}; a reading at node j with error variance e takes {@code (Ca)_j^2 / (C_jj + e)} from
 * it and {@code C_j C_j' / (C_jj + e)} from C (conditioning of a normal distribution). What is read
 * does not matter, only where.
 *
 * <p>Exact for the given covariance and for a wet area that stays as it is. Changes with each
 * {@link #read}; for one thread.
 */
public final class VolumeSpread {

  /** Deviation of the floor's height before any reading, far more than any floor's. */
  private static final double UNKNOWN_HEIGHT = 1;

  /** Deviation of its slopes before any reading, far more than any floor's. */
  private static final double UNKNOWN_SLOPE = 0.1;

  private final double[][] covariance;
  private final double[] withVolume;
  private double variance;

  private VolumeSpread(double[][] covariance, double[] areas) {
    this.covariance = covariance;
    this.withVolume = new double[areas.length];
    for (int i = 0; i < areas.length; i++) {
      for (int j = 0; j < areas.length; j++) {
        withVolume[i] += covariance[i][j] * areas[j];
      }
    }
    for (int i = 0; i < areas.length; i++) {
      variance += areas[i] * withVolume[i];
    }
  }

  /** After the readings of a surface. */
  public static VolumeSpread after(KrigedSurface surface, FloorNodes nodes) {
    return new VolumeSpread(mirrored(surface.covariances(nodes.x(), nodes.y())), nodes.wetArea());
  }

  /**
   * Before any reading: nothing is known of the floor's height nor, with a linear drift, of its
   * tilt.
   *
   * @param x where readings may be taken
   * @param y as many
   * @param areas the wet area at each of these places; 0 where one is only read
   */
  public static VolumeSpread before(
      Variogram variogram, Drift drift, double[] x, double[] y, double[] areas) {
    int n = x.length;
    Correlation correlation = new Correlation(variogram.shape(), variogram.range());
    double middleX = LocalSpots.mean(x);
    double middleY = LocalSpots.mean(y);
    double height = UNKNOWN_HEIGHT * UNKNOWN_HEIGHT;
    double slope = drift == Drift.LINEAR ? UNKNOWN_SLOPE * UNKNOWN_SLOPE : 0;
    double[][] covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      double[] row = covariance[i];
      correlation.fill(x[i], y[i], x, y, 0, n, row);
      for (int j = 0; j < n; j++) {
        double along = (x[i] - middleX) * (x[j] - middleX) + (y[i] - middleY) * (y[j] - middleY);
        row[j] = variogram.sill() * row[j] + height + slope * along;
      }
    }
    return new VolumeSpread(covariance, areas);
  }

  private static double[][] mirrored(double[][] upper) {
    for (int i = 0; i < upper.length; i++) {
      for (int j = 0; j < i; j++) {
        upper[i][j] = upper[j][i];
      }
    }
    return upper;
  }

  /** Variance of the volume now, m6. */
  public double variance() {
    return variance;
  }

  /** Standard deviation of the floor at a node now. */
  public double deviation(int node) {
    return Math.sqrt(Math.max(0, covariance[node][node]));
  }

  /**
   * What one more reading would take from the variance.
   *
   * @param error variance of the reading; positive
   */
  public double gain(int node, double error) {
    double own = Math.max(0, covariance[node][node]) + error;
    return own > 0 ? withVolume[node] * withVolume[node] / own : 0;
  }

  /**
   * Takes a reading at a node.
   *
   * @param error variance of the reading; positive
   */
  public void read(int node, double error) {
    double own = Math.max(0, covariance[node][node]) + error;
    if (!(own > 0)) {
      return;
    }
    variance = Math.max(0, variance - gain(node, error));
    double[] with = covariance[node].clone();
    double volume = withVolume[node] / own;
    for (int i = 0; i < with.length; i++) {
      withVolume[i] -= with[i] * volume;
      double share = with[i] / own;
      double[] row = covariance[i];
      for (int j = 0; j < with.length; j++) {
        row[j] -= share * with[j];
      }
    }
  }
}
