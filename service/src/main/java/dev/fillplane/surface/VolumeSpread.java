package dev.fillplane.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

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

  private final LeftCovariance covariance;
  private final double[] own;
  private final double[] withVolume;
  private final List<double[]> taken = new ArrayList<>();
  private double variance;

  private VolumeSpread(LeftCovariance covariance, double[] areas) {
    this.covariance = covariance;
    own = covariance.variances();
    withVolume = covariance.times(areas);
    for (int i = 0; i < areas.length; i++) {
      variance += areas[i] * withVolume[i];
    }
  }

  /** After the readings of a surface. */
  public static VolumeSpread after(KrigedSurface surface, FloorNodes nodes) {
    return new VolumeSpread(surface.left(nodes.x(), nodes.y()), nodes.wetArea());
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
    Correlation correlation = new Correlation(variogram.shape(), variogram.range());
    double[] height = new double[x.length];
    Arrays.fill(height, UNKNOWN_HEIGHT);
    double[][] unsure =
        drift == Drift.LINEAR
            ? new double[][] {height, slope(x), slope(y)}
            : new double[][] {height};
    double[][] known = new double[0][];
    return new VolumeSpread(
        new LeftCovariance(correlation, variogram.sill(), x, y, known, unsure), areas);
  }

  private static double[] slope(double[] x) {
    double middle = LocalSpots.mean(x);
    return Arrays.stream(x).map(at -> UNKNOWN_SLOPE * (at - middle)).toArray();
  }

  /** Variance of the volume now, m6. */
  public double variance() {
    return variance;
  }

  /** Standard deviation of the floor at a node now. */
  public double deviation(int node) {
    return Math.sqrt(Math.max(0, own[node]));
  }

  /**
   * What one more reading would take from the variance.
   *
   * @param error variance of the reading; positive
   */
  public double gain(int node, double error) {
    double read = Math.max(0, own[node]) + error;
    return read > 0 ? withVolume[node] * withVolume[node] / read : 0;
  }

  /**
   * Takes a reading at a node.
   *
   * @param error variance of the reading; positive
   */
  public void read(int node, double error) {
    double read = Math.max(0, own[node]) + error;
    if (!(read > 0)) {
      return;
    }
    variance = Math.max(0, variance - gain(node, error));
    double[] with = row(node);
    double volume = withVolume[node] / read;
    double scale = 1 / Math.sqrt(read);
    for (int i = 0; i < with.length; i++) {
      withVolume[i] -= with[i] * volume;
      with[i] *= scale;
      own[i] -= with[i] * with[i];
    }
    taken.add(with);
  }

  /** The row of C now: what each reading took is the product of one vector with itself. */
  private double[] row(int node) {
    double[] row = covariance.row(node);
    for (double[] reading : taken) {
      double share = reading[node];
      for (int i = 0; i < row.length; i++) {
        row[i] -= share * reading[i];
      }
    }
    return row;
  }
}
