package dev.fillplane.surface;

/**
 * Adds multiples of many rows to one, the inner loop of the factors here; {@link
 * Cholesky#forward(double[][], int, int)} has its own, since it leaves columns alone. Four rows are
 * added in one pass: the loop then becomes vector instructions by itself, which it does not with
 * eight rows, nor with two rows to write to.
 */
final class RowSums {

  private RowSums() {}

  /**
   * Adds to {@code row}, from column {@code from} on, {@code a[j]} times each of the rows from
   * {@code begin} to before {@code end}.
   */
  static void add(double[][] rows, int begin, int end, double[] a, double[] row, int from) {
    int j = begin;
    for (; j + 3 < end; j += 4) {
      addFour(rows, j, a, row, from);
    }
    for (; j < end; j++) {
      double[] r = rows[j];
      double times = a[j];
      for (int c = from; c < row.length; c++) {
        row[c] += times * r[c];
      }
    }
  }

  private static void addFour(double[][] rows, int j, double[] a, double[] row, int from) {
    double[] r0 = rows[j];
    double[] r1 = rows[j + 1];
    double[] r2 = rows[j + 2];
    double[] r3 = rows[j + 3];
    double a0 = a[j];
    double a1 = a[j + 1];
    double a2 = a[j + 2];
    double a3 = a[j + 3];
    for (int c = from; c < row.length; c++) {
      row[c] += a0 * r0[c] + a1 * r1[c] + a2 * r2[c] + a3 * r3[c];
    }
  }
}
