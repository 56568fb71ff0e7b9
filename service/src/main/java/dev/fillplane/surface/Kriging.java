package dev.fillplane.surface;

import java.util.Arrays;

/**
 * The solved kriging system of some spots: mean and covariance of the floor anywhere, in plan
 * coordinates about the centre of the spots. Immutable.
 *
 * <p>With {@code K = sill C + diag(variance)} and drift terms {@code F}: {@code b = (F'K^-1F)^-1
 * F'K^-1 z}, mean {@code f'b + k'K^-1(z - F b)}, variance {@code sill - k'K^-1k + g'(F'K^-1F)^-1 g}
 * with {@code g = f - F'K^-1k} (universal kriging; Chiles and Delfiner, Geostatistics, 2nd edition,
 * section 3.4, from memory). {@code k} has no nugget, so that both are those of the floor.
 */
final class Kriging {

  /** Added to the diagonal, in parts of the sill, where the matrix is not positive definite. */
  private static final double JITTER = 1e-10;

  /** The same in m2, (10 nm)^2, where there is hardly a sill. */
  private static final double LEAST_JITTER = 1e-16;

  private final LocalSpots spots;
  private final double sill;
  private final Correlation correlation;
  private final DriftTerms terms;
  private final Cholesky factor;
  private final double[][] whiteDrift;
  private final Cholesky driftFactor;
  private final double[] drift;
  private final double[] weights;

  Kriging(LocalSpots spots, DriftTerms terms, Variogram variogram) {
    this.spots = spots;
    this.terms = terms;
    sill = variogram.sill();
    correlation = new Correlation(variogram.shape(), variogram.range());
    factor = Cholesky.jittered(covariance(), Math.max(JITTER * sill, LEAST_JITTER));
    double[] whiteElevation = factor.forward(spots.z());
    whiteDrift = terms.columns(spots.x(), spots.y());
    for (int k = 0; k < whiteDrift.length; k++) {
      whiteDrift[k] = factor.forward(whiteDrift[k]);
    }
    driftFactor = driftFactor();
    drift = driftFactor.backward(driftFactor.forward(alongDrift(whiteElevation)));
    for (int k = 0; k < drift.length; k++) {
      for (int i = 0; i < whiteElevation.length; i++) {
        whiteElevation[i] -= drift[k] * whiteDrift[k][i];
      }
    }
    weights = factor.backward(whiteElevation);
  }

  private double[][] covariance() {
    int n = spots.count();
    double[][] matrix = new double[n][n];
    for (int i = 0; i < n; i++) {
      matrix[i][i] = sill + spots.variance()[i];
      for (int j = i + 1; j < n; j++) {
        double distance = Math.hypot(spots.x()[i] - spots.x()[j], spots.y()[i] - spots.y()[j]);
        matrix[i][j] = sill * correlation.at(distance);
      }
    }
    return matrix;
  }

  private Cholesky driftFactor() {
    double[][] matrix = new double[terms.count()][];
    for (int k = 0; k < matrix.length; k++) {
      matrix[k] = alongDrift(whiteDrift[k]);
    }
    return Cholesky.of(matrix)
        .orElseThrow(() -> new IllegalArgumentException("spots do not fix a plane"));
  }

  private double[] alongDrift(double[] white) {
    double[] sums = new double[terms.count()];
    for (int k = 0; k < sums.length; k++) {
      for (int i = 0; i < white.length; i++) {
        sums[k] += whiteDrift[k][i] * white[i];
      }
    }
    return sums;
  }

  /** Means above the datum at the places. */
  double[] means(double[] x, double[] y) {
    double[] out = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      for (int k = 0; k < drift.length; k++) {
        out[i] += drift[k] * terms.at(k, x[i], y[i]);
      }
    }
    double[] correlations = new double[x.length];
    for (int s = 0; s < weights.length; s++) {
      correlation.fill(spots.x()[s], spots.y()[s], x, y, x.length, correlations);
      double weight = sill * weights[s];
      for (int i = 0; i < x.length; i++) {
        out[i] += weight * correlations[i];
      }
    }
    return out;
  }

  /** Variances at the places; not negative. */
  double[] variances(double[] x, double[] y) {
    double[] variances = new double[x.length];
    Arrays.fill(variances, sill);
    double[][] known = new double[spots.count()][x.length];
    double[][] unsure = new double[terms.count()][x.length];
    whiten(x, y, known, unsure);
    for (double[] row : known) {
      for (int i = 0; i < x.length; i++) {
        variances[i] -= row[i] * row[i];
      }
    }
    for (double[] row : unsure) {
      for (int i = 0; i < x.length; i++) {
        variances[i] += row[i] * row[i];
      }
    }
    for (int i = 0; i < x.length; i++) {
      variances[i] = Math.max(0, variances[i]);
    }
    return variances;
  }

  /** Covariances of the places with one another, on and above the diagonal. */
  double[][] covariances(double[] x, double[] y) {
    int m = x.length;
    double[][] known = new double[spots.count()][m];
    double[][] unsure = new double[terms.count()][m];
    whiten(x, y, known, unsure);
    double[][] covariances = new double[m][m];
    for (int a = 0; a < m; a++) {
      correlation.fill(x[a], y[a], x, y, m, covariances[a]);
      for (int b = 0; b < m; b++) {
        covariances[a][b] *= sill;
      }
      addProducts(known, a, -1, covariances[a]);
      addProducts(unsure, a, 1, covariances[a]);
    }
    return covariances;
  }

  private static void addProducts(double[][] rows, int a, int sign, double[] out) {
    for (double[] row : rows) {
      double product = sign * row[a];
      for (int b = a; b < out.length; b++) {
        out[b] += product * row[b];
      }
    }
  }

  /** Fills {@code known} with {@code L^-1 k} and {@code unsure} with {@code R^-1 g}. */
  private void whiten(double[] x, double[] y, double[][] known, double[][] unsure) {
    int m = x.length;
    for (int s = 0; s < known.length; s++) {
      correlation.fill(spots.x()[s], spots.y()[s], x, y, m, known[s]);
      for (int i = 0; i < m; i++) {
        known[s][i] *= sill;
      }
    }
    factor.forward(known, 0, m);
    for (int k = 0; k < unsure.length; k++) {
      double[] g = unsure[k];
      for (int i = 0; i < m; i++) {
        g[i] = terms.at(k, x[i], y[i]);
      }
      for (int s = 0; s < known.length; s++) {
        double a = whiteDrift[k][s];
        for (int i = 0; i < m; i++) {
          g[i] -= a * known[s][i];
        }
      }
    }
    driftFactor.forward(unsure, 0, m);
  }

  /** Leave-one-out residuals in the order of the caller's spots. */
  LeaveOneOut leaveOneOut() {
    int n = spots.count();
    double[] own = factor.inverseDiagonal();
    double[][] columns = new double[terms.count()][];
    for (int k = 0; k < columns.length; k++) {
      columns[k] = factor.backward(whiteDrift[k]);
    }
    driftFactor.forward(columns, 0, n);
    double[] residual = new double[n];
    double[] standardized = new double[n];
    boolean[] told = new boolean[n];
    for (int i = 0; i < n; i++) {
      double q = own[i];
      for (double[] column : columns) {
        q -= column[i] * column[i];
      }
      int at = spots.order()[i];
      told[at] = q > 1e-9 * own[i];
      residual[at] = told[at] ? weights[i] / q : 0;
      standardized[at] = told[at] ? weights[i] / Math.sqrt(q) : 0;
    }
    return new LeaveOneOut(residual, standardized, told);
  }
}
