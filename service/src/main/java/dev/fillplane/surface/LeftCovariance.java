package dev.fillplane.surface;

import java.util.Arrays;

/**
 * Covariance of the floor between some places, as the readings leave it: {@code C - k'k + u'u}, C
 * the covariance before the readings, k what they tell and u what they leave unsure of the drift,
 * both whitened ({@link Kriging}). Its rows are worked out when they are asked for; it is never
 * written down as a whole. Arrays that nobody writes to.
 *
 * @param x of the places; local
 * @param y of the places; local
 * @param known a row for each reading, a column for each place
 * @param unsure a row for each drift term, a column for each place
 */
record LeftCovariance(
    Correlation correlation,
    double sill,
    double[] x,
    double[] y,
    double[][] known,
    double[][] unsure) {

  /** The variance at each place; not negative. */
  double[] variances() {
    double[] variances = new double[x.length];
    Arrays.fill(variances, sill);
    addSquares(known, -1, variances);
    addSquares(unsure, 1, variances);
    for (int i = 0; i < variances.length; i++) {
      variances[i] = Math.max(0, variances[i]);
    }
    return variances;
  }

  private static void addSquares(double[][] rows, int sign, double[] out) {
    for (double[] row : rows) {
      for (int i = 0; i < out.length; i++) {
        out[i] += sign * row[i] * row[i];
      }
    }
  }

  /** The covariances of one place with all. */
  double[] row(int place) {
    double[] row = new double[x.length];
    correlation.fill(x[place], y[place], x, y, 0, x.length, row);
    for (int i = 0; i < row.length; i++) {
      row[i] *= sill;
    }
    addProducts(known, place, -1, row);
    addProducts(unsure, place, 1, row);
    return row;
  }

  private static void addProducts(double[][] rows, int place, int sign, double[] out) {
    double[] times = new double[rows.length];
    for (int j = 0; j < times.length; j++) {
      times[j] = sign * rows[j][place];
    }
    RowSums.add(rows, 0, rows.length, times, out, 0);
  }

  /** The matrix times a vector. */
  double[] times(double[] vector) {
    double[] out = new double[x.length];
    double[] row = new double[x.length];
    for (int i = 0; i < out.length; i++) {
      correlation.fill(x[i], y[i], x, y, i, out.length, row);
      double own = sill * vector[i];
      double sum = 0;
      for (int j = i + 1; j < out.length; j++) {
        sum += row[j] * vector[j];
        out[j] += own * row[j];
      }
      out[i] += own + sill * sum;
    }
    addTimes(known, vector, -1, out);
    addTimes(unsure, vector, 1, out);
    return out;
  }

  private static void addTimes(double[][] rows, double[] vector, int sign, double[] out) {
    double[] times = new double[rows.length];
    for (int j = 0; j < times.length; j++) {
      for (int i = 0; i < vector.length; i++) {
        times[j] += rows[j][i] * vector[i];
      }
      times[j] *= sign;
    }
    RowSums.add(rows, 0, rows.length, times, out, 0);
  }
}
