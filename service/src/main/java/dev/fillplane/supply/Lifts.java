package dev.fillplane.supply;

import dev.fillplane.depth.DepthSummary;
import dev.fillplane.depth.Depths;
import dev.fillplane.depth.Fill;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The layers of a pour that is deeper than the sheet allows in one. Exact for the piecewise-linear
 * floor.
 *
 * <p>A lower layer is poured into the pockets and finds its level under the target by the thickness
 * of the layers above it, so that it covers what is deeper than those and runs out to nothing
 * against the floor. That rim, where it is thinner than the sheet's least layer, is told as its
 * thin area: it is scraped off, or the layer ends at a strip. The top layer covers all that is
 * poured; it is thin only where the pour itself is.
 *
 * @see LiftRule
 */
final class Lifts {

  private final Depths depths;
  private final DepthSummary depth;
  private final DataSheet sheet;
  private final PrimerNeed primer;
  private final double wait;

  /**
   * Layers of the pour of {@code depths}.
   *
   * @param depth of the same pour
   * @param wait time from one layer until the next is poured on it
   */
  Lifts(Depths depths, DepthSummary depth, DataSheet sheet, PrimerNeed primer, double wait) {
    this.depths = depths;
    this.depth = depth;
    this.sheet = sheet;
    this.primer = primer;
    this.wait = wait;
  }

  /**
   * Layers from the bottom; none where nothing is poured.
   *
   * @param place of the material in the request
   * @param findings receives a warning where one layer is not enough, no layers fit or a lower one
   *     has a thin rim, and an error where more than {@link LiftRule#MOST} would be needed
   */
  List<Lift> layers(Place place, Findings findings) {
    if (!(depth.maximum() > 0)) {
      return List.of();
    }
    LiftRule rule = new LiftRule(depth.maximum(), sheet);
    rule.warn(place, findings);
    double[] thicknesses =
        rule.number() > LiftRule.MOST ? new double[] {depth.maximum()} : rule.thicknesses();
    List<Lift> lifts = layers(thicknesses);
    if (rule.fits()) {
      warnOfRims(lifts, place, findings);
    }
    return lifts;
  }

  private List<Lift> layers(double[] thicknesses) {
    List<Lift> lifts = new ArrayList<>();
    Fill below = new Fill(0, 0);
    double above = depth.maximum();
    for (int i = 0; i < thicknesses.length; i++) {
      boolean top = i == thicknesses.length - 1;
      above = top ? 0 : above - thicknesses[i];
      Fill upTo = top ? new Fill(depth.pouredArea(), depth.volume()) : depths.deeperThan(above);
      lifts.add(layer(i + 1, thicknesses[i], above, upTo, below));
      below = upTo;
    }
    return List.copyOf(lifts);
  }

  /** What lies between two surfaces, of which {@code upTo} and {@code below} fill the floor. */
  private Lift layer(int number, double thickness, double above, Fill upTo, Fill below) {
    double volume = Math.max(0, upTo.volume() - below.volume());
    double onFloor = Math.max(0, upTo.area() - below.area());
    return new Lift(
        number,
        upTo.area(),
        volume,
        thickness,
        BagOdds.likely(volume, onFloor, sheet),
        primer.layer(above > 0 ? onFloor : depth.area() - below.area(), below.area()),
        number > 1 ? OptionalDouble.of(wait) : OptionalDouble.empty(),
        new ThinPart(depths, depth, sheet.minimumLift()).area(above, thickness, upTo));
  }

  private void warnOfRims(List<Lift> lifts, Place place, Findings findings) {
    double rims = lifts.stream().limit(lifts.size() - 1).mapToDouble(Lift::thinArea).sum();
    if (rims > 0) {
      findings.warning(
          "lift-rim-thin",
          place,
          "area",
          Amount.of(rims, Dimension.AREA),
          "minimum",
          Amount.of(sheet.minimumLift(), Dimension.HEIGHT));
    }
  }
}
