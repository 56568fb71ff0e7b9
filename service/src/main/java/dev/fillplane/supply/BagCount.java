package dev.fillplane.supply;

import dev.fillplane.finding.Finding;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;

/**
 * What a layer takes. Water and mass belong to the bags that are ordered.
 *
 * @param fill volume of the layer, without any allowance; of a range, halfway
 */
public record BagCount(
    Bags bags,
    @Measured(Dimension.FILL) double fill,
    @Measured(Dimension.LIQUID) double mixWater,
    Primer primer,
    @Measured(Dimension.MASS) double mass,
    List<Finding> warnings) {

  /** Copies the list. */
  public BagCount {
    warnings = List.copyOf(warnings);
  }
}
