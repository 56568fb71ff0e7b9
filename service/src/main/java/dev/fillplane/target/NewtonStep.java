package dev.fillplane.target;

import dev.fillplane.finding.Stopped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * The plane at which a quadratic price is least within half spaces. Three unknowns: never more than
 * three half spaces hold it, so that the one violated most comes in and the best of the few subsets
 * that keep it is taken (an LP-type problem after Sharir and Welzl, STACS 1992).
 */
final class NewtonStep {

  /** What counts as kept. */
  private static final double TOLERANCE = 1e-10;

  /** Added to the bend, as a part of its size, so that it has an inverse. */
  private static final double RIDGE = 1e-9;

  /** Half spaces whose directions differ by less than about the root of this count as one. */
  private static final double PARALLEL = 1e-12;

  private static final int MOST_ROUNDS = 100;

  private final double[] bend;
  private final double[] inverse;
  private final double[] free;
  private final double allowed;

  private NewtonStep(double[] bend, double[] inverse, double[] free, double allowed) {
    this.bend = bend;
    this.inverse = inverse;
    this.free = free;
    this.allowed = allowed;
  }

  /**
   * A quadratic price by its slope and bend at a plane.
   *
   * @param allowed what loose half spaces may be missed by
   */
  static Optional<NewtonStep> from(double[] plane, double[] slope, double[] bend, double allowed) {
    double ridge = RIDGE * (bend[0] + bend[3] + bend[5]);
    double[] b = bend.clone();
    b[0] += ridge;
    b[3] += ridge;
    b[5] += ridge;
    double[] minors = {
      b[3] * b[5] - b[4] * b[4],
      b[2] * b[4] - b[1] * b[5],
      b[1] * b[4] - b[2] * b[3],
      b[0] * b[5] - b[2] * b[2],
      b[1] * b[2] - b[0] * b[4],
      b[0] * b[3] - b[1] * b[1]
    };
    double determinant = b[0] * minors[0] + b[1] * minors[1] + b[2] * minors[2];
    if (!(determinant > 0) || !(minors[5] > 0)) {
      return Optional.empty();
    }
    for (int i = 0; i < 6; i++) {
      minors[i] /= determinant;
    }
    double[] down = times(minors, slope);
    double[] free = new double[3];
    for (int i = 0; i < 3; i++) {
      free[i] = plane[i] - down[i];
    }
    return Optional.of(new NewtonStep(b, minors, free, allowed));
  }

  private static double[] times(double[] m, double[] v) {
    return new double[] {
      m[0] * v[0] + m[1] * v[1] + m[2] * v[2],
      m[1] * v[0] + m[3] * v[1] + m[4] * v[2],
      m[2] * v[0] + m[4] * v[1] + m[5] * v[2]
    };
  }

  /** The best plane within all half spaces; empty where that cannot be told. */
  Optional<double[]> within(List<Cut> cuts) {
    List<Cut> basis = List.of();
    double[] best = free;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Stopped.ifInterrupted();
      Cut worst = worst(cuts, best);
      if (worst == null) {
        return Optional.of(best);
      }
      List<Cut> next = null;
      double least = Double.POSITIVE_INFINITY;
      for (List<Cut> subset : subsets(basis, worst)) {
        double[] plane = onAll(subset);
        if (plane != null && distance(plane) < least && keeps(plane, basis, worst)) {
          least = distance(plane);
          best = plane;
          next = subset;
        }
      }
      if (next == null) {
        return Optional.empty();
      }
      basis = next;
    }
    return Optional.empty();
  }

  private Cut worst(List<Cut> cuts, double[] plane) {
    Cut worst = null;
    double least = -TOLERANCE;
    for (Cut cut : cuts) {
      double spare = spare(cut, plane);
      if (spare < least) {
        least = spare;
        worst = cut;
      }
    }
    return worst;
  }

  private double spare(Cut cut, double[] plane) {
    return cut.spare(plane) + (cut.loose() ? allowed : 0);
  }

  private boolean keeps(double[] plane, List<Cut> basis, Cut worst) {
    return spare(worst, plane) >= -TOLERANCE
        && basis.stream().allMatch(cut -> spare(cut, plane) >= -TOLERANCE);
  }

  /** All subsets of at most three that have the new one in them. */
  private static List<List<Cut>> subsets(List<Cut> basis, Cut worst) {
    List<List<Cut>> subsets = new ArrayList<>();
    for (int bits = 0; bits < 1 << basis.size(); bits++) {
      List<Cut> subset = new ArrayList<>(List.of(worst));
      for (int i = 0; i < basis.size(); i++) {
        if ((bits >> i & 1) == 1) {
          subset.add(basis.get(i));
        }
      }
      if (subset.size() <= 3) {
        subsets.add(subset);
      }
    }
    return subsets;
  }

  /** The best plane that lies on the edges of some half spaces; null if they do not meet. */
  private double[] onAll(List<Cut> subset) {
    int n = subset.size();
    double[][] normals = new double[n][];
    double[][] steps = new double[n][];
    double[][] system = new double[n][n];
    double[] missing = new double[n];
    for (int i = 0; i < n; i++) {
      Cut cut = subset.get(i);
      normals[i] = new double[] {cut.level(), cut.alongX(), cut.alongY()};
      steps[i] = times(inverse, normals[i]);
      double size = Math.sqrt(dot(normals[i], steps[i]));
      for (int k = 0; k < 3; k++) {
        normals[i][k] /= size;
        steps[i][k] /= size;
      }
      missing[i] = -spare(cut, free) / size;
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        system[i][j] = dot(normals[i], steps[j]);
      }
    }
    DecompositionSolver solver =
        new LUDecomposition(new Array2DRowRealMatrix(system, false), PARALLEL).getSolver();
    if (!solver.isNonSingular()) {
      return null;
    }
    double[] lengths = solver.solve(new ArrayRealVector(missing, false)).toArray();
    double[] plane = free.clone();
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < 3; k++) {
        plane[k] += lengths[i] * steps[i][k];
      }
    }
    return plane;
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  /** How much dearer a plane is than the free one, up to a factor. */
  private double distance(double[] plane) {
    double[] off = {plane[0] - free[0], plane[1] - free[1], plane[2] - free[2]};
    return dot(off, times(bend, off));
  }
}
