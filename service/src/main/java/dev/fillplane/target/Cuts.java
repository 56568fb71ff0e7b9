package dev.fillplane.target;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NoFeasibleSolutionException;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.PivotSelectionRule;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/** A small linear program over free unknowns, that grows cut by cut. */
final class Cuts {

  /** Accuracy of the simplex method, for numbers about 1. */
  private static final double EPSILON = 1e-9;

  /** Below this an entry of the tableau is rounding; the usual 1e-10 is too near the accuracy. */
  private static final double CUT_OFF = 1e-13;

  /** Cuts whose numbers differ by less are almost the same. */
  private static final double ALMOST = 1e-5;

  private static final int ULPS = 10;

  /** What a solution may miss a cut by. */
  private static final double SLACK = 1e-7;

  private static final int MOST_PIVOTS = 500;

  private final int unknowns;
  private final List<LinearConstraint> cuts = new ArrayList<>();

  Cuts(int unknowns) {
    this.unknowns = unknowns;
  }

  /** Holds the sum of factors times unknowns at or above a value. */
  void atLeast(double value, double... factors) {
    cuts.add(new LinearConstraint(factors, Relationship.GEQ, value));
  }

  /** Holds the sum of factors times unknowns at or below a value. */
  void atMost(double value, double... factors) {
    cuts.add(new LinearConstraint(factors, Relationship.LEQ, value));
  }

  /** Bounds one unknown from above. */
  void atMost(int unknown, double value) {
    cuts.add(new LinearConstraint(only(unknown), Relationship.LEQ, value));
  }

  /**
   * Makes one unknown as small as all cuts allow; gives all unknowns.
   *
   * <p>The library's simplex method fails on a few nearly degenerate programs (none feasible, or
   * going round in circles), and not on the same ones in each order and under each rule; so further
   * tries are made, the last without cuts that are almost the same as later ones.
   *
   * @throws MathIllegalStateException if it fails every time
   */
  double[] minimise(int unknown) {
    try {
      return solve(unknown, cuts, PivotSelectionRule.DANTZIG);
    } catch (MathIllegalStateException failed) {
      return minimiseAgain(unknown);
    }
  }

  private double[] minimiseAgain(int unknown) {
    List<LinearConstraint> latestFirst = new ArrayList<>(cuts);
    Collections.reverse(latestFirst);
    try {
      return solve(unknown, latestFirst, PivotSelectionRule.DANTZIG);
    } catch (MathIllegalStateException failed) {
      return solve(unknown, thinned(latestFirst), PivotSelectionRule.BLAND);
    }
  }

  private static List<LinearConstraint> thinned(List<LinearConstraint> rows) {
    List<LinearConstraint> kept = new ArrayList<>();
    for (LinearConstraint row : rows) {
      if (kept.stream().noneMatch(other -> isAlmost(row, other))) {
        kept.add(row);
      }
    }
    return kept;
  }

  private static boolean isAlmost(LinearConstraint row, LinearConstraint other) {
    return row.getRelationship() == other.getRelationship()
        && Math.abs(row.getValue() - other.getValue()) < ALMOST
        && row.getCoefficients().getLInfDistance(other.getCoefficients()) < ALMOST;
  }

  private double[] solve(int unknown, List<LinearConstraint> rows, PivotSelectionRule rule) {
    double[] point =
        new SimplexSolver(EPSILON, ULPS, CUT_OFF)
            .optimize(
                new MaxIter(MOST_PIVOTS),
                new LinearObjectiveFunction(only(unknown), 0),
                new LinearConstraintSet(rows),
                GoalType.MINIMIZE,
                new NonNegativeConstraint(false),
                rule)
            .getPoint();
    if (!rows.stream().allMatch(cut -> holds(cut, point))) {
      throw new NoFeasibleSolutionException();
    }
    return point;
  }

  private static boolean holds(LinearConstraint cut, double[] point) {
    double spare =
        cut.getCoefficients().dotProduct(new ArrayRealVector(point, false)) - cut.getValue();
    return cut.getRelationship() == Relationship.GEQ ? spare >= -SLACK : spare <= SLACK;
  }

  private double[] only(int unknown) {
    double[] factors = new double[unknowns];
    factors[unknown] = 1;
    return factors;
  }
}
