package dev.fillplane.target;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.PivotSelectionRule;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/** A small linear program over free unknowns, that grows cut by cut. */
final class Cuts {

  /** Accuracy of the simplex method, for numbers about 1. */
  private static final double EPSILON = 1e-11;

  private static final int MOST_PIVOTS = 10_000;

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

  /** Makes one unknown as small as all cuts allow; gives all unknowns. */
  double[] minimise(int unknown) {
    return new SimplexSolver(EPSILON)
        .optimize(
            new MaxIter(MOST_PIVOTS),
            new LinearObjectiveFunction(only(unknown), 0),
            new LinearConstraintSet(cuts),
            GoalType.MINIMIZE,
            new NonNegativeConstraint(false),
            PivotSelectionRule.BLAND)
        .getPoint();
  }

  private double[] only(int unknown) {
    double[] factors = new double[unknowns];
    factors[unknown] = 1;
    return factors;
  }
}
