package dev.fillplane.target;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;

/** Takes a target as stated and looks at what it keeps. */
final class GivenTarget {

  private GivenTarget() {}

  static Plane of(TargetWish wish, Limits limits, Place place, Findings findings) {
    Plane plane = new Plane(wish.elevation().orElse(0), wish.slopeX(), wish.slopeY());
    SlopeCheck.look(plane, place.at(wish.slopeX() != 0 ? "slopeX" : "slopeY"), findings);
    for (Band band : limits.bands()) {
      double by = band.off(plane.at(band.x(), band.y()));
      if (by > Limits.TOUCH) {
        boolean fixed = band.kind() == BoundKind.FIXED;
        findings.error(
            fixed ? "target-misses-fixed-height" : "target-above-ceiling",
            place.at(fixed ? "fixed" : "ceiling").at(band.index()),
            "by",
            Amount.of(by, Dimension.HEIGHT));
      }
    }
    GivenCheck.look(plane, limits, place.at("elevation"), findings);
    return plane;
  }
}
