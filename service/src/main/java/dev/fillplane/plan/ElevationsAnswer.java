package dev.fillplane.plan;

import dev.fillplane.finding.Finding;
import dev.fillplane.survey.Elevations;
import java.util.List;

/** An adjusted survey. */
public record ElevationsAnswer(Elevations elevations, List<Finding> warnings) {

  /** Copies the warnings. */
  public ElevationsAnswer {
    warnings = List.copyOf(warnings);
  }
}
