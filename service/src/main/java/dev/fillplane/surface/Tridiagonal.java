package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;

/**
 * Makes a symmetric matrix tridiagonal by Householder reflections (Golub and Van Loan, Matrix
 * Computations, section 8.3, from memory). What a reflection changes is kept as two vectors; rows
 * take in those of several reflections at once, which needs far fewer passes over the matrix. For
 * one thread.
 */
final class Tridiagonal {

  /** Reflections that wait to be taken in. */
  private static final int WAITING = 4;

  private final double[][] matrix;
  private final double[][] waiting = new double[2 * WAITING][];
  private final double[] times;
  private int count;

  final double[] diagonal;
  final double[] beside;

  /**
   * Reduces the rows and columns of {@code matrix} from {@code first} on; the matrix is used up.
   *
   * @param along is reflected alike, from {@code first} on
   */
  Tridiagonal(double[][] matrix, int first, double[] along) {
    this.matrix = matrix;
    int n = matrix.length;
    times = new double[Math.max(n, waiting.length)];
    diagonal = new double[n - first];
    beside = new double[n - first];
    for (int k = first; k < n; k++) {
      Stopped.ifInterrupted();
      takeIn(k, k);
      diagonal[k - first] = matrix[k][k];
      if (k < n - 1) {
        Reflection reflection = new Reflection(matrix[k], k + 1);
        beside[k - first] = reflection.first();
        reflection.apply(along);
        add(reflection.vector(), reflection.factor(), k + 1);
      }
    }
  }

  /** Takes what waits into a row, from a column on. */
  private void takeIn(int row, int from) {
    for (int j = 0; j < 2 * count; j += 2) {
      times[j] = -waiting[j + 1][row];
      times[j + 1] = -waiting[j][row];
    }
    RowSums.add(waiting, 0, 2 * count, times, matrix[row], from);
  }

  /** Adds the reflection {@code I - factor v v'} of the entries from {@code from} on. */
  private void add(double[] v, double factor, int from) {
    double[] p = product(v, factor, from);
    double half = factor / 2 * dot(p, v, from);
    for (int i = from; i < p.length; i++) {
      p[i] -= half * v[i];
    }
    waiting[2 * count] = p;
    waiting[2 * count + 1] = v;
    count++;
    if (count == WAITING) {
      for (int row = from; row < matrix.length; row++) {
        takeIn(row, from);
      }
      count = 0;
    }
  }

  /** The matrix, with what waits, times {@code factor v}. */
  private double[] product(double[] v, double factor, int from) {
    double[] p = new double[v.length];
    for (int i = from; i < v.length; i++) {
      times[i] = factor * v[i];
    }
    RowSums.add(matrix, from, v.length, times, p, from);
    for (int j = 0; j < 2 * count; j += 2) {
      times[j] = -factor * dot(waiting[j + 1], v, from);
      times[j + 1] = -factor * dot(waiting[j], v, from);
    }
    RowSums.add(waiting, 0, 2 * count, times, p, from);
    return p;
  }

  private static double dot(double[] a, double[] b, int from) {
    double sum = 0;
    for (int i = from; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
