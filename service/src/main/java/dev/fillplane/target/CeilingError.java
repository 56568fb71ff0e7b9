package dev.fillplane.target;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;

/** Says that the minimum depth over a high spot does not fit under a ceiling. */
final class CeilingError {

  private CeilingError() {}

  static void note(
      Limits.Cap cap, double by, HighPoints highs, int spot, Place place, Findings findings) {
    findings.error(
        "ceiling-below-minimum",
        place.at("ceiling").at(cap.index()),
        "by",
        Amount.of(by, Dimension.HEIGHT),
        "spot",
        highs.name(spot).map(name -> "reading " + name).orElse("between the readings"),
        "x",
        Amount.of(highs.x(spot), Dimension.PLAN),
        "y",
        Amount.of(highs.y(spot), Dimension.PLAN),
        "elevation",
        Amount.of(highs.elevation(spot), Dimension.HEIGHT));
  }
}
