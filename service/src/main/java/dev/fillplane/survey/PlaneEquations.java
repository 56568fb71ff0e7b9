package dev.fillplane.survey;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Weighted least squares for the planes of all setups. The points are eliminated first (each has
 * its weighted mean as its best elevation for given planes), so that only the small symmetric
 * equations of the setups are left. Unknowns are the corrections to the heights of the {@link
 * SpanningTree}, which keeps the numbers small; rows and columns are scaled to a unit diagonal.
 *
 * <p>Source: elimination of a group of unknowns from normal equations, as in any text on adjustment
 * (Ghilani, Adjustment Computations; from memory).
 */
final class PlaneEquations {

  /** Smallest pivot of the scaled equations; the range of reading errors keeps them above. */
  private static final double PIVOT = 1e-14;

  private final Network network;
  private final SpanningTree tree;
  private final int[] unknown;
  private final double[][] normal;
  private final double[] right;
  private final double[] correction;
  private final double[][] cofactor;

  PlaneEquations(Network network, SpanningTree tree) {
    this.network = network;
    this.tree = tree;
    unknown = new int[network.setups()];
    int unknowns = 0;
    for (int s = 0; s < unknown.length; s++) {
      unknown[s] = network.used(s) && s != tree.root() ? unknowns++ : -1;
    }
    normal = new double[unknowns][unknowns];
    right = new double[unknowns];
    correction = new double[network.setups()];
    cofactor = new double[network.setups()][network.setups()];
    for (int point : network.ties()) {
      add(point);
    }
    if (unknowns > 0) {
      solve();
    }
  }

  private void add(int point) {
    Sight sight = new Sight(network, point);
    double mean = network.isHeld(point) ? 0 : sight.mean(offsets(sight));
    double shared = network.isHeld(point) ? 0 : 1 / sight.weight();
    double[] offsets = offsets(sight);
    for (int g = 0; g < sight.groups(); g++) {
      int row = unknown[sight.setup(g)];
      if (row < 0) {
        continue;
      }
      double weight = sight.weight(g);
      right[row] += weight * (offsets[g] - mean);
      normal[row][row] += weight;
      for (int h = 0; h < sight.groups(); h++) {
        int column = unknown[sight.setup(h)];
        if (column >= 0) {
          normal[row][column] -= weight * sight.weight(h) * shared;
        }
      }
    }
  }

  /** What the readings of a point say of the correction of its setup's plane less its own. */
  private double[] offsets(Sight sight) {
    double[] offsets = new double[sight.groups()];
    Arrays.setAll(
        offsets,
        g -> sight.reading(g) - (tree.plane(sight.setup(g)) - tree.elevation(sight.point())));
    return offsets;
  }

  private void solve() {
    double[] scale = new double[right.length];
    Arrays.setAll(scale, i -> 1 / Math.sqrt(normal[i][i]));
    double[][] scaled = new double[right.length][right.length];
    double[] scaledRight = new double[right.length];
    for (int i = 0; i < scaled.length; i++) {
      scaledRight[i] = right[i] * scale[i];
      for (int j = 0; j <= i; j++) {
        scaled[i][j] = normal[i][j] * scale[i] * scale[j];
        scaled[j][i] = scaled[i][j];
      }
    }
    DecompositionSolver solver =
        new CholeskyDecomposition(new Array2DRowRealMatrix(scaled, false), PIVOT, PIVOT)
            .getSolver();
    double[] solution = solver.solve(new ArrayRealVector(scaledRight, false)).toArray();
    RealMatrix inverse = solver.getInverse();
    for (int s = 0; s < unknown.length; s++) {
      int row = unknown[s];
      correction[s] = row < 0 ? 0 : solution[row] * scale[row];
      for (int t = 0; row >= 0 && t < unknown.length; t++) {
        int column = unknown[t];
        cofactor[s][t] =
            column < 0 ? 0 : inverse.getEntry(row, column) * scale[row] * scale[column];
      }
    }
  }

  /** The adjusted elevation of the plane of {@code setup}. */
  double plane(int setup) {
    return tree.plane(setup) + correction[setup];
  }

  /** The covariance of two planes, m2. */
  double covariance(int setup, int other) {
    return cofactor[setup][other];
  }
}
