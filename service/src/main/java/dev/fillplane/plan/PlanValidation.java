package dev.fillplane.plan;

import dev.fillplane.finding.Finding;
import java.util.List;

/** What is wrong and what is odd about a plan request. */
public record PlanValidation(boolean valid, List<Finding> errors, List<Finding> warnings) {

  /** Copies the lists. */
  public PlanValidation {
    errors = List.copyOf(errors);
    warnings = List.copyOf(warnings);
  }
}
