package dev.fillplane.plan;

import dev.fillplane.bay.Preparation;
import dev.fillplane.depth.DepthSummary;
import dev.fillplane.finding.Finding;
import dev.fillplane.flatness.FlatnessSummary;
import dev.fillplane.heat.Drying;
import dev.fillplane.heat.Mix;
import dev.fillplane.pour.Pour;
import dev.fillplane.pour.Troubles;
import dev.fillplane.safety.Note;
import dev.fillplane.screed.Pin;
import dev.fillplane.screed.Rail;
import dev.fillplane.supply.Quantities;
import dev.fillplane.surface.SurfaceSummary;
import dev.fillplane.survey.Elevations;
import dev.fillplane.target.TargetSummary;
import java.util.List;
import java.util.Optional;

/**
 * The answer for one unit; parts as in their packages.
 *
 * @param reference the caller's name of the unit
 */
public record Plan(
    Optional<String> reference,
    Elevations elevations,
    SurfaceSummary surface,
    TargetSummary target,
    DepthSummary depth,
    Quantities quantities,
    Mix mix,
    Pour pour,
    List<Option> options,
    Grinding grinding,
    Preparation preparation,
    List<Pin> pins,
    List<Rail> rails,
    FlatnessSummary flatness,
    Drying drying,
    Troubles troubles,
    List<Note> safety,
    List<Finding> warnings,
    Computed computed) {

  /** Copies the lists. */
  public Plan {
    options = List.copyOf(options);
    pins = List.copyOf(pins);
    rails = List.copyOf(rails);
    safety = List.copyOf(safety);
    warnings = List.copyOf(warnings);
  }
}
