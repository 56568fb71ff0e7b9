package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.Optional;

/**
 * A gap over its limit.
 *
 * @param line its id, for measured lines
 * @param from one contact of the edge
 * @param to the other contact
 * @param at the lowest place between them
 * @param straightedge length of the edge
 * @param gap under it
 * @param limit of it
 */
public record ListedGap(
    Optional<String> line,
    GapPlace from,
    GapPlace to,
    GapPlace at,
    @Measured(Dimension.PLAN) double straightedge,
    @Measured(Dimension.HEIGHT) double gap,
    @Measured(Dimension.HEIGHT) double limit) {

  /** A gap of a measured line. */
  public static ListedGap of(String line, Gap gap, double straightedge, double limit) {
    return new ListedGap(
        Optional.of(line),
        GapPlace.along(gap.from()),
        GapPlace.along(gap.to()),
        GapPlace.along(gap.at()),
        straightedge,
        gap.gap(),
        limit);
  }

  /** A gap of a floor. */
  public static ListedGap of(Gap gap, double straightedge, double limit) {
    return new ListedGap(
        Optional.empty(),
        GapPlace.onPlan(gap.from()),
        GapPlace.onPlan(gap.to()),
        GapPlace.onPlan(gap.at()),
        straightedge,
        gap.gap(),
        limit);
  }
}
