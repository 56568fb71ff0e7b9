package dev.fillplane.surface;

import java.util.Arrays;

/**
 * Mean and covariance of the floor anywhere, in plan coordinates about the centre of the spots:
 * mean {@code f'b + k'w}, covariance {@code sill c - k1'K^-1k2 + g1'(F'K^-1F)^-1 g2} with {@code g
 * = f - F'K^-1k}, in the words of {@link KrigingSystem}. {@code k} has no nugget, so that both are
 * those of the floor. Immutable.
 */
final class Kriging {

  private final KrigingSystem system;

  Kriging(KrigingSystem system) {
    this.system = system;
  }

  /** Means above the datum at the places. */
  double[] means(double[] x, double[] y) {
    double[] out = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      for (int k = 0; k < system.drift.length; k++) {
        out[i] += system.drift[k] * system.terms.at(k, x[i], y[i]);
      }
    }
    double[] correlations = new double[x.length];
    for (int s = 0; s < system.weights.length; s++) {
      system.correlation.fill(
          system.spots.x()[s], system.spots.y()[s], x, y, 0, x.length, correlations);
      double weight = system.sill * system.weights[s];
      for (int i = 0; i < x.length; i++) {
        out[i] += weight * correlations[i];
      }
    }
    return out;
  }

  /** Variances at the places; not negative. */
  double[] variances(double[] x, double[] y) {
    double[][] known = new double[system.spots.count()][x.length];
    double[][] unsure = new double[system.terms.count()][x.length];
    whiten(x, y, known, unsure);
    return variances(known, unsure, x.length);
  }

  private double[] variances(double[][] known, double[][] unsure, int places) {
    double[] variances = new double[places];
    Arrays.fill(variances, system.sill);
    for (double[] row : known) {
      for (int i = 0; i < places; i++) {
        variances[i] -= row[i] * row[i];
      }
    }
    for (double[] row : unsure) {
      for (int i = 0; i < places; i++) {
        variances[i] += row[i] * row[i];
      }
    }
    for (int i = 0; i < places; i++) {
      variances[i] = Math.max(0, variances[i]);
    }
    return variances;
  }

  /** The factor of the covariances of the places with one another. */
  FieldFactor factor(double[] x, double[] y, FieldFactor.Prior prior, double jitter) {
    double[][] known = new double[system.spots.count()][x.length];
    double[][] unsure = new double[system.terms.count()][x.length];
    whiten(x, y, known, unsure);
    double[] variances = variances(known, unsure, x.length);
    double largest = Arrays.stream(variances).max().orElse(0);
    double least = Math.max(jitter * largest, Double.MIN_NORMAL);
    return FieldFactor.of(prior, known, unsure, variances, least);
  }

  /** Covariances of the places with one another, on and above the diagonal. */
  double[][] covariances(double[] x, double[] y) {
    int m = x.length;
    double[][] known = new double[system.spots.count()][m];
    double[][] unsure = new double[system.terms.count()][m];
    whiten(x, y, known, unsure);
    double[][] covariances = new double[m][m];
    for (int a = 0; a < m; a++) {
      system.correlation.fill(x[a], y[a], x, y, a, m, covariances[a]);
      for (int b = a; b < m; b++) {
        covariances[a][b] *= system.sill;
      }
      addProducts(known, a, -1, covariances[a]);
      addProducts(unsure, a, 1, covariances[a]);
    }
    return covariances;
  }

  /** Adds products from place {@code a} on, four rows at a time so that {@code out} stays near. */
  private static void addProducts(double[][] rows, int a, int sign, double[] out) {
    int row = 0;
    for (; row + 3 < rows.length; row += 4) {
      double[] r0 = rows[row];
      double[] r1 = rows[row + 1];
      double[] r2 = rows[row + 2];
      double[] r3 = rows[row + 3];
      double p0 = sign * r0[a];
      double p1 = sign * r1[a];
      double p2 = sign * r2[a];
      double p3 = sign * r3[a];
      for (int b = a; b < out.length; b++) {
        out[b] += p0 * r0[b] + p1 * r1[b] + p2 * r2[b] + p3 * r3[b];
      }
    }
    for (; row < rows.length; row++) {
      double[] r = rows[row];
      double product = sign * r[a];
      for (int b = a; b < out.length; b++) {
        out[b] += product * r[b];
      }
    }
  }

  /** Fills {@code known} with {@code L^-1 k} and {@code unsure} with {@code R^-1 g}. */
  private void whiten(double[] x, double[] y, double[][] known, double[][] unsure) {
    int m = x.length;
    for (int s = 0; s < known.length; s++) {
      system.correlation.fill(system.spots.x()[s], system.spots.y()[s], x, y, 0, m, known[s]);
      for (int i = 0; i < m; i++) {
        known[s][i] *= system.sill;
      }
    }
    system.factor.forward(known, 0, m);
    for (int k = 0; k < unsure.length; k++) {
      double[] g = unsure[k];
      for (int i = 0; i < m; i++) {
        g[i] = system.terms.at(k, x[i], y[i]);
      }
      for (int s = 0; s < known.length; s++) {
        double a = system.whiteDrift[k][s];
        for (int i = 0; i < m; i++) {
          g[i] -= a * known[s][i];
        }
      }
    }
    system.driftFactor.forward(unsure, 0, m);
  }
}
