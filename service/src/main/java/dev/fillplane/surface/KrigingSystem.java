package dev.fillplane.surface;

/**
 * The kriging system of some spots, solved: with {@code K = sill C + diag(variance) = L L'} and
 * drift terms {@code F}, the drift {@code b = (F'K^-1F)^-1 F'K^-1 z} and the weights {@code K^-1 (z
 * - F b)} (universal kriging; Chiles and Delfiner, Geostatistics, 2nd edition, section 3.4, from
 * memory). Immutable.
 */
final class KrigingSystem {

  /** Added to the diagonal, in parts of the sill, where the matrix is not positive definite. */
  private static final double JITTER = 1e-10;

  /** The same in m2, (10 nm)^2, where there is hardly a sill. */
  private static final double LEAST_JITTER = 1e-16;

  final LocalSpots spots;
  final double sill;
  final Correlation correlation;
  final DriftTerms terms;
  final Cholesky factor;
  final double[][] whiteDrift;
  final Cholesky driftFactor;
  final double[] drift;
  final double[] weights;

  KrigingSystem(LocalSpots spots, DriftTerms terms, Variogram variogram) {
    this.spots = spots;
    this.terms = terms;
    sill = variogram.sill();
    correlation = new Correlation(variogram.shape(), variogram.range());
    factor = Factorization.jittered(covariance(), Math.max(JITTER * sill, LEAST_JITTER));
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
        double east = spots.x()[i] - spots.x()[j];
        double north = spots.y()[i] - spots.y()[j];
        matrix[i][j] = sill * correlation.at(Math.sqrt(east * east + north * north));
      }
    }
    return matrix;
  }

  private Cholesky driftFactor() {
    double[][] matrix = new double[terms.count()][];
    for (int k = 0; k < matrix.length; k++) {
      matrix[k] = alongDrift(whiteDrift[k]);
    }
    return Factorization.of(matrix)
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
