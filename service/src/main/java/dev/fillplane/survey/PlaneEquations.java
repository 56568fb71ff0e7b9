package dev.fillplane.survey;

import java.util.Arrays;

/**
 * Weighted least squares for the planes of all setups. The points are eliminated first (each has
 * its weighted mean as its best elevation for given planes), so that only the small symmetric
 * equations of the setups are left. Unknowns are the corrections to the heights of the {@link
 * SpanningTree}, which keeps the numbers small, and the two tilts of each plane that may be tilted,
 * each with an observation of 0 beforehand that has the deviation of such a laser.
 *
 * <p>Source: elimination of a group of unknowns from normal equations, unknowns with observations
 * beforehand, as in any text on adjustment (Ghilani, Adjustment Computations; from memory).
 */
final class PlaneEquations {

  private static final int NONE = -1;

  private final Network network;
  private final SpanningTree tree;
  private final PointPositions positions;
  private final Lasers lasers;
  private final int[] height;
  private final int[] tilt;
  private final NormalEquations equations;

  /**
   * Sets them up and solves them.
   *
   * @throws org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException if rounding hides
   *     what tells the unknowns apart
   */
  PlaneEquations(
      Network network, SpanningTree tree, PointPositions positions, Lasers lasers, boolean tilts) {
    this.network = network;
    this.tree = tree;
    this.positions = positions;
    this.lasers = lasers;
    height = new int[network.setups()];
    tilt = new int[network.setups()];
    int unknowns = 0;
    for (int s = 0; s < height.length; s++) {
      height[s] = network.used(s) && s != tree.root() ? unknowns++ : NONE;
    }
    for (int s = 0; s < tilt.length; s++) {
      boolean tilted = tilts && network.used(s) && lasers.tilts(s);
      tilt[s] = tilted ? unknowns : NONE;
      unknowns += tilted ? 2 : 0;
    }
    equations = new NormalEquations(unknowns);
    for (int point : network.ties()) {
      add(point);
    }
    double weight = 1 / (lasers.deviation() * lasers.deviation());
    for (int first : tilt) {
      if (first != NONE) {
        equations.add(first, first, weight);
        equations.add(first + 1, first + 1, weight);
      }
    }
    equations.solve();
  }

  /** The three unknowns of a plane, {@link #NONE} for one that is not. */
  private int[] unknowns(int setup) {
    int first = tilt[setup];
    return new int[] {height[setup], first, first == NONE ? NONE : first + 1};
  }

  /** How the height of a plane at {@code point} depends on the unknowns of the plane. */
  private double[] coefficients(int setup, int point) {
    return new double[] {
      1, lasers.east(setup, positions.x(point)), lasers.north(setup, positions.y(point))
    };
  }

  private void add(int point) {
    Sight sight = new Sight(network, point);
    double[] offsets = offsets(sight);
    double mean = network.isHeld(point) ? 0 : sight.mean(offsets);
    double shared = network.isHeld(point) ? 0 : 1 / sight.weight();
    int[][] columns = new int[sight.groups()][];
    double[][] coefficients = new double[sight.groups()][];
    Arrays.setAll(columns, g -> unknowns(sight.setup(g)));
    Arrays.setAll(coefficients, g -> coefficients(sight.setup(g), point));
    for (int g = 0; g < sight.groups(); g++) {
      int[] rows = columns[g];
      double[] of = coefficients[g];
      for (int i = 0; i < rows.length; i++) {
        if (rows[i] != NONE) {
          equations.addRight(rows[i], sight.weight(g) * of[i] * (offsets[g] - mean));
          add(rows[i], of[i] * sight.weight(g), rows, of);
          for (int h = 0; h < sight.groups(); h++) {
            double both = -of[i] * sight.weight(g) * sight.weight(h) * shared;
            add(rows[i], both, columns[h], coefficients[h]);
          }
        }
      }
    }
  }

  private void add(int row, double factor, int[] columns, double[] coefficients) {
    for (int j = 0; j < columns.length; j++) {
      if (columns[j] != NONE) {
        equations.add(row, columns[j], factor * coefficients[j]);
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

  /** The adjusted elevation of the plane of {@code setup} where its laser stands. */
  double plane(int setup) {
    return tree.plane(setup) + value(height[setup]);
  }

  /** The adjusted elevation of the plane of {@code setup} over {@code point}. */
  double plane(int setup, int point) {
    int[] unknowns = unknowns(setup);
    double[] of = coefficients(setup, point);
    return tree.plane(setup)
        + of[0] * value(unknowns[0])
        + of[1] * value(unknowns[1])
        + of[2] * value(unknowns[2]);
  }

  private double value(int unknown) {
    return unknown == NONE ? 0 : equations.value(unknown);
  }

  /** The covariance of two planes over {@code point}, m2. */
  double covariance(int setup, int other, int point) {
    int[] rows = unknowns(setup);
    int[] columns = unknowns(other);
    double[] of = coefficients(setup, point);
    double[] with = coefficients(other, point);
    double sum = 0;
    for (int i = 0; i < rows.length; i++) {
      for (int j = 0; j < columns.length; j++) {
        if (rows[i] != NONE && columns[j] != NONE) {
          sum += of[i] * with[j] * equations.cofactor(rows[i], columns[j]);
        }
      }
    }
    return sum;
  }

  /** The variance of a plane over {@code point}, m2. */
  double variance(int setup, int point) {
    double sum = height[setup] == NONE ? 0 : equations.cofactor(height[setup], height[setup]);
    int along = tilt[setup];
    if (along == NONE) {
      return sum;
    }
    double east = lasers.east(setup, positions.x(point));
    double north = lasers.north(setup, positions.y(point));
    double both = east * north * equations.cofactor(along, along + 1);
    if (height[setup] != NONE) {
      both += east * equations.cofactor(height[setup], along);
      both += north * equations.cofactor(height[setup], along + 1);
    }
    return sum
        + east * east * equations.cofactor(along, along)
        + north * north * equations.cofactor(along + 1, along + 1)
        + 2 * both;
  }

  /** Whether a tilt of {@code setup} is estimated. */
  boolean tilts(int setup) {
    return tilt[setup] != NONE;
  }

  /** Rise of the plane of {@code setup} along x. */
  double tiltX(int setup) {
    return value(tilt[setup]);
  }

  /** Rise of the plane of {@code setup} along y. */
  double tiltY(int setup) {
    return value(tilt[setup] + 1);
  }

  /** Standard deviation of the less certain of the two. */
  double tiltDeviation(int setup) {
    int first = tilt[setup];
    return Math.max(deviation(first), deviation(first + 1));
  }

  /** Standard deviation of the more certain of the two. */
  double sharperTilt(int setup) {
    int first = tilt[setup];
    return Math.min(deviation(first), deviation(first + 1));
  }

  private double deviation(int unknown) {
    return Math.sqrt(equations.cofactor(unknown, unknown));
  }
}
