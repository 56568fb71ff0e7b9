package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;
import java.util.Arrays;

/**
 * Upper triangular factor U of the covariance that readings leave between some places, {@code U'U =
 * C - k'k + u'u} ({@link LeftCovariance}). The covariance is never written down: each row is made,
 * and what the earlier rows of U hold is taken off, in one go.
 */
final class FieldFactor {

  private final Prior prior;
  private final double[][] known;
  private final double[][] unsure;
  private final double[] variance;
  private final double[][] upper;
  private final double[] times;

  /** The covariances before the readings, row by row. */
  interface Prior {

    /** Writes those of one place with itself and the places after it. */
    void fill(int place, double[] row);
  }

  private FieldFactor(LeftCovariance left, Prior prior) {
    this.prior = prior;
    known = left.known();
    unsure = left.unsure();
    variance = left.variances();
    int n = variance.length;
    upper = new double[n][n];
    times = new double[Math.max(n, Math.max(known.length, unsure.length))];
  }

  /**
   * The factor with as little added to the diagonal as makes the matrix positive definite: nothing,
   * {@code jitter} parts of the largest variance, ten times, a hundred times that and so on.
   *
   * @param prior the covariances before the readings, as the other ones have them
   * @throws ArithmeticException if the matrix is hopeless
   */
  static FieldFactor of(LeftCovariance left, Prior prior, double jitter) {
    FieldFactor factor = new FieldFactor(left, prior);
    double largest = Arrays.stream(factor.variance).max().orElse(0);
    double add = Math.max(jitter * largest, Double.MIN_NORMAL);
    double added = 0;
    for (int attempt = 0; attempt <= Factorization.ATTEMPTS; attempt++) {
      if (factor.factorise(added)) {
        return factor;
      }
      added += add;
      add *= 10;
    }
    throw new ArithmeticException("matrix is not a covariance");
  }

  private boolean factorise(double added) {
    for (int k = 0; k < upper.length; k++) {
      Stopped.ifInterrupted();
      double[] row = upper[k];
      prior.fill(k, row);
      add(known, known.length, k, -1);
      add(unsure, unsure.length, k, 1);
      add(upper, k, k, -1);
      if (!scale(k, row, added)) {
        return false;
      }
    }
    return true;
  }

  /** Adds to row k the part that some rows have in its covariances. */
  private void add(double[][] rows, int count, int k, int sign) {
    for (int j = 0; j < count; j++) {
      times[j] = sign * rows[j][k];
    }
    RowSums.add(rows, 0, count, times, upper[k], k);
  }

  private boolean scale(int k, double[] row, double added) {
    double pivot = row[k] + added;
    if (!(pivot > Factorization.LEAST_PIVOT * (variance[k] + added))) {
      return false;
    }
    row[k] = pivot;
    double scale = 1 / Math.sqrt(pivot);
    for (int c = k; c < row.length; c++) {
      row[c] *= scale;
    }
    return true;
  }

  /** Turns independent standard normal numbers, one for each place, into a draw. */
  void draw(double[] normals) {
    double[] times = normals.clone();
    Arrays.fill(normals, 0);
    for (int j = 0; j < upper.length; j += 4) {
      // Below its diagonal U holds zeros.
      RowSums.add(upper, j, Math.min(j + 4, upper.length), times, normals, j);
    }
  }
}
