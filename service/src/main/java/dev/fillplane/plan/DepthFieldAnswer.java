package dev.fillplane.plan;

import dev.fillplane.depth.DepthSummary;
import dev.fillplane.finding.Finding;
import dev.fillplane.surface.SurfaceSummary;
import dev.fillplane.survey.Elevations;
import dev.fillplane.target.TargetSummary;
import java.util.List;
import java.util.Optional;

/** The floor, the target and the depths of a plan, without what is poured how. */
public record DepthFieldAnswer(
    Optional<String> reference,
    Elevations elevations,
    SurfaceSummary surface,
    TargetSummary target,
    DepthSummary depth,
    List<Finding> warnings) {

  /** Copies the warnings. */
  public DepthFieldAnswer {
    warnings = List.copyOf(warnings);
  }
}
