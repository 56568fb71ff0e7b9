package dev.fillplane.survey;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The normal equations of a least-squares problem, {@code N x = b}, solved by Cholesky after rows
 * and columns are scaled to a unit diagonal, which makes them indifferent to the units of the
 * unknowns. The inverse of N is the covariance of the unknowns where the weights are one over the
 * variances.
 */
final class NormalEquations {

  /** Smallest pivot of the scaled equations that is told from rounding. */
  private static final double PIVOT = 1e-14;

  private final double[][] normal;
  private final double[] right;
  private double[] solution;
  private double[][] inverse;

  NormalEquations(int unknowns) {
    normal = new double[unknowns][unknowns];
    right = new double[unknowns];
  }

  /** Adds to N; its other half must be added as well. */
  void add(int row, int column, double value) {
    normal[row][column] += value;
  }

  /** Adds to b. */
  void addRight(int row, double value) {
    right[row] += value;
  }

  /** Adds an observation: {@code value} is the sum of coefficients times unknowns. */
  void observe(double[] coefficients, double value, double weight) {
    for (int i = 0; i < coefficients.length; i++) {
      right[i] += weight * coefficients[i] * value;
      for (int j = 0; j < coefficients.length; j++) {
        normal[i][j] += weight * coefficients[i] * coefficients[j];
      }
    }
  }

  /**
   * Solves them.
   *
   * @throws org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException if the observations
   *     do not tell all unknowns apart
   */
  void solve() {
    int n = right.length;
    solution = new double[n];
    inverse = new double[n][n];
    if (n == 0) {
      return;
    }
    double[] scale = new double[n];
    Arrays.setAll(scale, i -> 1 / Math.sqrt(normal[i][i]));
    double[][] scaled = new double[n][n];
    double[] scaledRight = new double[n];
    for (int i = 0; i < n; i++) {
      scaledRight[i] = right[i] * scale[i];
      for (int j = 0; j <= i; j++) {
        scaled[i][j] = normal[i][j] * scale[i] * scale[j];
        scaled[j][i] = scaled[i][j];
      }
    }
    DecompositionSolver solver =
        new CholeskyDecomposition(new Array2DRowRealMatrix(scaled, false), PIVOT, PIVOT)
            .getSolver();
    double[] found = solver.solve(new ArrayRealVector(scaledRight, false)).toArray();
    RealMatrix scaledInverse = solver.getInverse();
    for (int i = 0; i < n; i++) {
      solution[i] = found[i] * scale[i];
      for (int j = 0; j < n; j++) {
        inverse[i][j] = scaledInverse.getEntry(i, j) * scale[i] * scale[j];
      }
    }
  }

  /** An unknown, once solved. */
  double value(int unknown) {
    return solution[unknown];
  }

  /** An entry of the inverse of N, once solved. */
  double cofactor(int unknown, int other) {
    return inverse[unknown][other];
  }
}
