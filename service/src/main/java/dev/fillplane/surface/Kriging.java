package dev.fillplane.surface;

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
    return left(x, y).variances();
  }

  /** The covariance of the places with one another. */
  LeftCovariance left(double[] x, double[] y) {
    double[][] known = new double[system.spots.count()][x.length];
    double[][] unsure = new double[system.terms.count()][x.length];
    whiten(x, y, known, unsure);
    return new LeftCovariance(system.correlation, system.sill, x, y, known, unsure);
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
