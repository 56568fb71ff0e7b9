package dev.fillplane.plan;

import dev.fillplane.finding.Finding;
import dev.fillplane.flatness.EdgeCheck;
import dev.fillplane.flatness.FNumberCheck;
import dev.fillplane.flatness.FNumberPair;
import dev.fillplane.flatness.FlatnessLimit;
import dev.fillplane.flatness.Hollow;
import dev.fillplane.flatness.Hump;
import dev.fillplane.flatness.LineFlatness;
import dev.fillplane.flatness.ListedGap;
import dev.fillplane.flatness.Passes;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How flat a floor is and what would make it flat.
 *
 * @param verdict whether it is flat enough
 * @param limit the main figure that it is held against; none where F-numbers alone are asked for
 * @param checks every figure of the limit, the main one first
 * @param fNumbers what the class of the limit asks for, where lines were measured
 * @param gap largest under the edge of the main figure
 * @param lines each measured line; none for a survey
 * @param combined F-numbers of all lines, where they apply
 * @param gaps over the limit, the worst first, at most 100
 * @param grind humps of a survey, the highest first; none of it is needed where the floor passes
 * @param patch hollows of a survey, the deepest first; none of it is needed where the floor passes
 * @param bags that the hollows take together, where a material was told
 * @param bagsSuffice whether those left over are enough for the next pass
 * @param next the next pass over the floor of a survey
 * @param warnings what is odd or does not apply
 */
public record FlatnessReport(
    Passes verdict,
    Optional<FlatnessLimit> limit,
    List<EdgeCheck> checks,
    Optional<FNumberCheck> fNumbers,
    @Measured(Dimension.HEIGHT) double gap,
    List<LineFlatness> lines,
    Optional<FNumberPair> combined,
    List<ListedGap> gaps,
    List<Hump> grind,
    List<Hollow> patch,
    OptionalInt bags,
    Optional<Boolean> bagsSuffice,
    Optional<NextPass> next,
    List<Finding> warnings) {

  /** Copies the lists. */
  public FlatnessReport {
    checks = List.copyOf(checks);
    lines = List.copyOf(lines);
    gaps = List.copyOf(gaps);
    grind = List.copyOf(grind);
    patch = List.copyOf(patch);
    warnings = List.copyOf(warnings);
  }
}
