package dev.fillplane.surface;

import java.util.Arrays;

/**
 * Upper triangular factor U of the covariance that readings leave between some places, {@code U'U =
 * C - k'k + u'u}: C the covariance before the readings, k what is known and u what stays unsure of
 * the drift, both whitened ({@link Kriging}). The covariance is never written down: its rows are
 * made two at a time, and what the earlier rows of U hold is taken off at once.
 */
final class FieldFactor {

  /** A pivot under this part of its diagonal entry is rounding, not a number. */
  private static final double LEAST_PIVOT = 1e-12;

  /** Tries to make the matrix positive definite. */
  private static final int ATTEMPTS = 12;

  private final Prior prior;
  private final double[][] known;
  private final double[][] unsure;
  private final double[] variance;
  private final double[][] upper;
  private final double[] a;
  private final double[] b;

  /** The covariances before the readings, row by row. */
  interface Prior {

    /** Writes those of one place with itself and the places after it. */
    void fill(int place, double[] row);
  }

  private FieldFactor(Prior prior, double[][] known, double[][] unsure, double[] variance) {
    this.prior = prior;
    this.known = known;
    this.unsure = unsure;
    this.variance = variance;
    int n = variance.length;
    upper = new double[n][n];
    a = new double[Math.max(n, Math.max(known.length, unsure.length))];
    b = new double[a.length];
  }

  /**
   * The factor with as little added to the diagonal as makes the matrix positive definite: nothing,
   * {@code jitter}, 10 jitter, 100 jitter and so on.
   *
   * @param variance the diagonal
   * @throws ArithmeticException if the matrix is hopeless
   */
  static FieldFactor of(
      Prior prior, double[][] known, double[][] unsure, double[] variance, double jitter) {
    FieldFactor factor = new FieldFactor(prior, known, unsure, variance);
    double add = jitter;
    double added = 0;
    for (int attempt = 0; attempt <= ATTEMPTS; attempt++) {
      if (factor.factorise(added)) {
        return factor;
      }
      added += add;
      add *= 10;
    }
    throw new ArithmeticException("matrix is not a covariance");
  }

  private boolean factorise(double added) {
    int n = upper.length;
    double[] spare = new double[n];
    for (int k = 0; k < n; k += 2) {
      double[] second = k + 1 < n ? upper[k + 1] : spare;
      reduce(k, upper[k], second);
      if (!scale(k, upper[k], added)) {
        return false;
      }
      if (k + 1 < n) {
        double share = upper[k][k + 1];
        for (int c = k + 1; c < n; c++) {
          second[c] -= share * upper[k][c];
        }
        second[k] = 0;
        if (!scale(k + 1, second, added)) {
          return false;
        }
      }
    }
    return true;
  }

  /** The rows k and k + 1 of the covariance less what the rows of U before them hold. */
  private void reduce(int k, double[] first, double[] second) {
    prior.fill(k, first);
    if (k + 1 < upper.length) {
      prior.fill(k + 1, second);
    }
    column(known, known.length, k, -1);
    RowSums.add(known, 0, known.length, a, b, first, second, k);
    column(unsure, unsure.length, k, 1);
    RowSums.add(unsure, 0, unsure.length, a, b, first, second, k);
    column(upper, k, k, -1);
    RowSums.add(upper, 0, k, a, b, first, second, k);
  }

  private void column(double[][] rows, int count, int k, int sign) {
    int next = Math.min(k + 1, upper.length - 1);
    for (int j = 0; j < count; j++) {
      a[j] = sign * rows[j][k];
      b[j] = sign * rows[j][next];
    }
  }

  private boolean scale(int k, double[] row, double added) {
    double pivot = row[k] + added;
    if (!(pivot > LEAST_PIVOT * (variance[k] + added))) {
      return false;
    }
    row[k] = pivot;
    double scale = 1 / Math.sqrt(pivot);
    for (int c = k; c < row.length; c++) {
      row[c] *= scale;
    }
    return true;
  }

  /**
   * Turns two rows of independent standard normal numbers into two draws from the covariance.
   *
   * @param first has a number for each place; likewise {@code second}
   */
  void draw(double[] first, double[] second) {
    double[] z1 = first.clone();
    double[] z2 = second.clone();
    Arrays.fill(first, 0);
    Arrays.fill(second, 0);
    for (int j = 0; j < upper.length; j += 4) {
      // Below its diagonal U holds zeros.
      RowSums.add(upper, j, Math.min(j + 4, upper.length), z1, z2, first, second, j);
    }
  }
}
