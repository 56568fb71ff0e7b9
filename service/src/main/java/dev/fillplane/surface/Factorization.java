package dev.fillplane.surface;

import java.util.Optional;

/** Makes the {@link Cholesky} factor of a matrix, row by row of its upper part. */
final class Factorization {

  /** A pivot under this part of its diagonal entry is rounding, not a number. */
  static final double LEAST_PIVOT = 1e-12;

  /** Tries to make a matrix positive definite. */
  static final int ATTEMPTS = 12;

  private Factorization() {}

  /**
   * The factor of {@code matrix}, of which only the part on and above the diagonal is read; empty
   * if it is not positive definite or too near to that.
   */
  static Optional<Cholesky> of(double[][] matrix) {
    int n = matrix.length;
    double[][] upper = new double[n][];
    for (int k = 0; k < n; k++) {
      double[] row = matrix[k].clone();
      subtractEarlier(upper, row, k);
      if (!(row[k] > LEAST_PIVOT * matrix[k][k])) {
        return Optional.empty();
      }
      double scale = 1 / Math.sqrt(row[k]);
      for (int j = k; j < n; j++) {
        row[j] *= scale;
      }
      upper[k] = row;
    }
    return Optional.of(new Cholesky(transposed(upper)));
  }

  /**
   * The factor of {@code matrix} with as little added to its diagonal as makes it positive
   * definite: nothing, {@code jitter}, 10 jitter, 100 jitter and so on. The diagonal is changed in
   * place.
   *
   * @throws ArithmeticException if the matrix is hopeless
   */
  static Cholesky jittered(double[][] matrix, double jitter) {
    Optional<Cholesky> factor = of(matrix);
    double add = jitter;
    for (int attempt = 0; factor.isEmpty() && attempt < ATTEMPTS; attempt++) {
      for (int i = 0; i < matrix.length; i++) {
        matrix[i][i] += add;
      }
      add *= 10;
      factor = of(matrix);
    }
    return factor.orElseThrow(() -> new ArithmeticException("matrix is not a covariance"));
  }

  private static void subtractEarlier(double[][] upper, double[] row, int k) {
    double[] times = new double[k];
    for (int j = 0; j < k; j++) {
      times[j] = -upper[j][k];
    }
    RowSums.add(upper, 0, k, times, row, k);
  }

  private static double[][] transposed(double[][] upper) {
    double[][] lower = new double[upper.length][];
    for (int i = 0; i < upper.length; i++) {
      lower[i] = new double[i + 1];
      for (int j = 0; j <= i; j++) {
        lower[i][j] = upper[j][i];
      }
    }
    return lower;
  }
}
