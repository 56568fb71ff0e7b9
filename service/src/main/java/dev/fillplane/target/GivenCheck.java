package dev.fillplane.target;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.surface.FloorSample;

/**
 * Looks where a given target is below the floor, or thinner over it than the minimum; where the
 * floor may be ground, whether it has to be ground deeper than allowed.
 */
final class GivenCheck {

  private GivenCheck() {}

  static void look(Plane plane, Limits limits, Place place, Findings findings) {
    HighPoints highs = limits.highs();
    int highest = highs.highestOver(plane);
    double above = highs.elevation(highest) - plane.at(highs.x(highest), highs.y(highest));
    if (limits.grindDepth() > 0) {
      lookAtGrinding(above + limits.minimumDepth(), limits, place, findings);
      return;
    }
    if (above > Limits.TOUCH) {
      findings.warning(
          "target-below-floor",
          place,
          "area",
          Amount.of(areaOver(highs.floor(), plane, 0), Dimension.AREA),
          "height",
          Amount.of(above, Dimension.HEIGHT));
    }
    if (above + limits.minimumDepth() > Limits.TOUCH) {
      findings.warning(
          "below-minimum-depth",
          place,
          "minimum",
          Amount.of(limits.minimumDepth(), Dimension.HEIGHT),
          "area",
          Amount.of(areaOver(highs.floor(), plane, limits.minimumDepth()), Dimension.AREA),
          "missing",
          Amount.of(above + limits.minimumDepth(), Dimension.HEIGHT));
    }
  }

  private static void lookAtGrinding(
      double deepest, Limits limits, Place place, Findings findings) {
    if (deepest > limits.grindDepth() + Limits.TOUCH) {
      findings.error(
          "grinding-too-deep",
          place,
          "deepest",
          Amount.of(deepest, Dimension.HEIGHT),
          "limit",
          Amount.of(limits.grindDepth(), Dimension.HEIGHT));
    }
  }

  /** Area on which the floor stands above the plane lowered by a depth. */
  private static double areaOver(FloorSample floor, Plane plane, double depth) {
    double area = 0;
    for (int room = 0; room < floor.rooms().size(); room++) {
      area +=
          floor.under(plane.elevation() - depth, plane.slopeX(), plane.slopeY(), room).cutArea();
    }
    return Math.max(0, area);
  }
}
