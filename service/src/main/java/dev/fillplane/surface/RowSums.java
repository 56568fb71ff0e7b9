package dev.fillplane.surface;

/**
 * Adds multiples of many rows to two rows at once, the inner loop of the factors here. Four rows are
 * read for each pass over the two that are written, so that the processor adds rather than moves;
 * the loops become vector instructions by themselves.
 */
final class RowSums {

  private RowSums() {}

  /**
   * Adds to {@code first} and {@code second}, from column {@code from} on, {@code a[j]} and {@code
   * b[j]} times each of the rows from {@code begin} to before {@code end}.
   */
  static void add(
      double[][] rows,
      int begin,
      int end,
      double[] a,
      double[] b,
      double[] first,
      double[] second,
      int from) {
    int j = begin;
    for (; j + 3 < end; j += 4) {
      addFour(rows, j, a, b, first, second, from);
    }
    for (; j < end; j++) {
      double[] row = rows[j];
      double toFirst = a[j];
      double toSecond = b[j];
      for (int c = from; c < row.length; c++) {
        first[c] += toFirst * row[c];
        second[c] += toSecond * row[c];
      }
    }
  }

  private static void addFour(
      double[][] rows, int j, double[] a, double[] b, double[] first, double[] second, int from) {
    double[] r0 = rows[j];
    double[] r1 = rows[j + 1];
    double[] r2 = rows[j + 2];
    double[] r3 = rows[j + 3];
    double a0 = a[j];
    double a1 = a[j + 1];
    double a2 = a[j + 2];
    double a3 = a[j + 3];
    double b0 = b[j];
    double b1 = b[j + 1];
    double b2 = b[j + 2];
    double b3 = b[j + 3];
    for (int c = from; c < r0.length; c++) {
      first[c] += a0 * r0[c] + a1 * r1[c] + a2 * r2[c] + a3 * r3[c];
      second[c] += b0 * r0[c] + b1 * r1[c] + b2 * r2[c] + b3 * r3[c];
    }
  }
}
