package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Arrays;
import java.util.Comparator;
import java.util.OptionalDouble;

/** Where each point is on plan: where it was read first with a position. */
final class PointPositions {

  /** How far apart on plan two readings of one point may be told to be. */
  static final double TOLERANCE = 0.01;

  private final Observations observations;
  private final int[] first;

  /** Errors where one point stands in two places. */
  PointPositions(Observations observations, Findings findings) {
    this.observations = observations;
    first = new int[observations.names().count()];
    Arrays.fill(first, -1);
    for (int i = 0; i < observations.count(); i++) {
      if (observations.placed(i)) {
        place(i, findings);
      }
    }
  }

  private void place(int i, Findings findings) {
    int point = observations.point()[i];
    if (first[point] < 0) {
      first[point] = i;
      return;
    }
    double apart = apart(first[point], i);
    if (apart > TOLERANCE) {
      findings.error(
          "point-in-two-places",
          observations.places().apply(i),
          "point",
          observations.names().name(point),
          "apart",
          Amount.of(apart, Dimension.PLAN));
    }
  }

  private double apart(int i, int j) {
    return Math.hypot(
        observations.x()[i] - observations.x()[j], observations.y()[i] - observations.y()[j]);
  }

  /** Orders points by where they are; those without a place come last. */
  Comparator<Integer> order() {
    return Comparator.<Integer>comparingDouble(point -> x(point).orElse(Double.NaN))
        .thenComparingDouble(point -> y(point).orElse(Double.NaN));
  }

  OptionalDouble x(int point) {
    return first[point] < 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(observations.x()[first[point]]);
  }

  OptionalDouble y(int point) {
    return first[point] < 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(observations.y()[first[point]]);
  }
}
