package dev.fillplane.target;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;

/** Says where a target is steeper than a leveller keeps. */
final class SlopeCheck {

  /** Slopes nearer than this count as equal. */
  private static final double TOUCH = 1e-9;

  private SlopeCheck() {}

  static void look(Plane plane, Place place, Findings findings) {
    Amount slope = Amount.of(plane.slope(), Dimension.SLOPE);
    if (plane.slope() > TargetFinder.TOO_STEEP + TOUCH) {
      Amount limit = Amount.of(TargetFinder.TOO_STEEP, Dimension.SLOPE);
      findings.error("slope-too-steep", place, "slope", slope, "limit", limit);
    } else if (plane.slope() > TargetFinder.STEEP + TOUCH) {
      Amount limit = Amount.of(TargetFinder.STEEP, Dimension.SLOPE);
      findings.warning("slope-steep", place, "slope", slope, "limit", limit);
    }
  }
}
