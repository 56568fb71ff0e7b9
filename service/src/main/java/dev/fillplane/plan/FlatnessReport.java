package dev.fillplane.plan;

import dev.fillplane.finding.Finding;
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
 * @param limit that it is held against
 * @param gap largest under the edge
 * @param lines each measured line; none for a survey
 * @param combined F-numbers of all lines, where they apply
 * @param gaps over the limit, the worst first, at most 100
 * @param grind humps of a survey, the highest first; none of it is needed where the floor passes
 * @param patch hollows of a survey, the deepest first; none of it is needed where the floor passes
 * @param bags that the hollows take, where a material was told
 * @param warnings what is odd or does not apply
 */
public record FlatnessReport(
    Passes verdict,
    FlatnessLimit limit,
    @Measured(Dimension.HEIGHT) double gap,
    List<LineFlatness> lines,
    Optional<FNumberPair> combined,
    List<ListedGap> gaps,
    List<Hump> grind,
    List<Hollow> patch,
    OptionalInt bags,
    List<Finding> warnings) {

  /** Copies the lists. */
  public FlatnessReport {
    lines = List.copyOf(lines);
    gaps = List.copyOf(gaps);
    grind = List.copyOf(grind);
    patch = List.copyOf(patch);
    warnings = List.copyOf(warnings);
  }
}
