package dev.fillplane.supply;

import dev.fillplane.depth.DepthSummary;
import dev.fillplane.depth.Depths;
import dev.fillplane.depth.Fill;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * Where the pour is thinner than the sheet's least layer, its edges against floor that stands out
 * counted, and two ways to mend it. Zero where nothing is thin, and for a sheet that is rated to a
 * feather edge. Exact for the piecewise-linear floor.
 *
 * @param minimum the sheet's least layer
 * @param area that is poured, but thinner than that
 * @param volume of what is poured there
 * @param missing what a higher target would have to add so that no floor has less than the minimum
 * @param grindArea floor to grind so that the same target leaves the minimum everywhere, by at most
 *     {@code missing}; floor above the target counted, beyond what the plan grinds already
 * @param grindVolume of floor to grind for that
 */
public record ThinArea(
    @Measured(Dimension.HEIGHT) double minimum,
    @Measured(Dimension.AREA) double area,
    @Measured(Dimension.FILL) double volume,
    @Measured(Dimension.HEIGHT) double missing,
    @Measured(Dimension.AREA) double grindArea,
    @Measured(Dimension.FILL) double grindVolume) {

  /** Of a pour, by its depths and their summary. */
  static ThinArea of(Depths depths, DepthSummary depth, DataSheet sheet) {
    double least = sheet.minimumLift();
    ThinPart part = new ThinPart(depths, depth, least);
    Fill whole = new Fill(depth.pouredArea(), depth.volume());
    double area = part.area(0, depth.maximum(), whole);
    if (!(area > 0)) {
      return new ThinArea(least, 0, 0, 0, 0, 0);
    }
    Fill deep = part.deepEnough(0);
    double volume = Math.max(0, depth.volume() - deep.volume() - part.level() * deep.area());
    double grindArea = depth.area() - deep.area();
    return new ThinArea(
        least,
        area,
        volume,
        least - depth.minimum(),
        grindArea,
        least * grindArea - volume + standingOut(depth));
  }

  /** Volume of floor above the target; where the plan grinds it, nothing is left of it. */
  private static double standingOut(DepthSummary depth) {
    return depth.minimum() < 0 ? depth.grindVolume() : 0;
  }

  /** Says what to do about it, if anything. */
  void warn(Place place, Findings findings) {
    if (area > 0) {
      findings.warning(
          "thin-area",
          place,
          "area",
          Amount.of(area, Dimension.AREA),
          "minimum",
          Amount.of(minimum, Dimension.HEIGHT),
          "missing",
          Amount.of(missing, Dimension.HEIGHT),
          "grindArea",
          Amount.of(grindArea, Dimension.AREA),
          "grindVolume",
          Amount.of(grindVolume, Dimension.FILL));
    }
  }
}
