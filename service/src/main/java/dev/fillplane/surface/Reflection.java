package dev.fillplane.surface;

/**
 * A Householder reflection {@code I - t v v'} of the entries from {@code from} on that takes a
 * vector to its first of these entries, with the others 0 (Golub and Van Loan, Matrix Computations,
 * section 5.1, from memory).
 */
final class Reflection {

  private final int from;
  private final double[] v;
  private final double factor;
  private final double first;

  Reflection(double[] vector, int from) {
    this.from = from;
    this.v = vector.clone();
    double square = 0;
    for (int i = from; i < v.length; i++) {
      square += v[i] * v[i];
    }
    first = v[from] > 0 ? -Math.sqrt(square) : Math.sqrt(square);
    double cross = square - first * v[from];
    v[from] -= first;
    factor = cross > 0 ? 1 / cross : 0;
  }

  /** What the vector's first entry becomes. */
  double first() {
    return first;
  }

  /** The vector v; what stands before its first entry does not count. */
  double[] vector() {
    return v;
  }

  /** The number t. */
  double factor() {
    return factor;
  }

  /** Reflects {@code other} in place. */
  void apply(double[] other) {
    double along = 0;
    for (int i = from; i < v.length; i++) {
      along += v[i] * other[i];
    }
    along *= factor;
    for (int i = from; i < v.length; i++) {
      other[i] -= along * v[i];
    }
  }

  /** Reflects rows and columns of a symmetric matrix in place, from {@code from} on. */
  void applyBothSides(double[][] matrix) {
    int n = v.length;
    double[] p = new double[n];
    for (int i = from; i < n; i++) {
      double a = factor * v[i];
      double[] row = matrix[i];
      for (int j = from; j < n; j++) {
        p[j] += a * row[j];
      }
    }
    double along = 0;
    for (int i = from; i < n; i++) {
      along += p[i] * v[i];
    }
    along *= factor / 2;
    for (int i = from; i < n; i++) {
      p[i] -= along * v[i];
    }
    for (int i = from; i < n; i++) {
      double vi = v[i];
      double pi = p[i];
      double[] row = matrix[i];
      for (int j = from; j < n; j++) {
        row[j] -= vi * p[j] + pi * v[j];
      }
    }
  }
}
