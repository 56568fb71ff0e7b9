package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * One figure of a limit and what was found of it.
 *
 * @param straightedge length of the edge
 * @param share of its places that must keep to the limit, 1 for all
 * @param limit of the gap
 * @param gap largest that was found
 * @param met share of the places that keep to the limit
 * @param verdict given how well the heights are known
 */
public record EdgeCheck(
    @Measured(Dimension.PLAN) double straightedge,
    double share,
    @Measured(Dimension.HEIGHT) double limit,
    @Measured(Dimension.HEIGHT) double gap,
    double met,
    Passes verdict) {

  /** What the places of an edge tell about {@code limit}. */
  public static EdgeCheck of(GapLimit limit, Placements places) {
    return new EdgeCheck(
        limit.straightedge(),
        limit.share(),
        limit.gap(),
        places.largest(),
        places.met(),
        places.verdict(limit.share()));
  }

  /** The same where not every gap can be seen: that the floor passes stays unclear. */
  public EdgeCheck unseen() {
    return verdict == Passes.WITHIN
        ? new EdgeCheck(straightedge, share, limit, gap, met, Passes.UNCLEAR)
        : this;
  }
}
