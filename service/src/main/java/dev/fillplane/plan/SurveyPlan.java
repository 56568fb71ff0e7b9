package dev.fillplane.plan;

import dev.fillplane.finding.Finding;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;

/**
 * Where to read a floor, in the order of a walk.
 *
 * @param readings how many places there are
 * @param spread bags above the likely ones that the survey will ask for at the confidence
 * @param walk length of the way from the exit over all places
 */
public record SurveyPlan(
    Optional<String> reference,
    List<SurveyStop> points,
    int readings,
    double spread,
    @Measured(Dimension.PLAN) double walk,
    List<Finding> warnings) {

  /** Copies the lists. */
  public SurveyPlan {
    points = List.copyOf(points);
    warnings = List.copyOf(warnings);
  }
}
