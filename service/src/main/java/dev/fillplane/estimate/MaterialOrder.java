package dev.fillplane.estimate;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;

/**
 * What is ordered of one material for all units that are poured with it. Water and mass belong to
 * the bags of the order.
 *
 * @param material id in the catalogue, if it came from there
 * @param units poured with it
 * @param likely bags, as likely too many as too few
 * @param order bags that suffice for all units at the confidence
 * @param sumOfSingles bags if each unit orders for itself at that confidence
 * @param saved bags fewer than that
 * @param lotShare part of the variance of the bags that the yield of the lot brings, 0 to 1; no
 *     number of units makes it smaller
 */
public record MaterialOrder(
    Optional<String> material,
    @Measured(Dimension.MASS) double bagMass,
    int units,
    int likely,
    int order,
    int sumOfSingles,
    int saved,
    double lotShare,
    @Measured(Dimension.LIQUID) double mixWater,
    @Measured(Dimension.LIQUID) double primer,
    @Measured(Dimension.MASS) double mass,
    int bagsPerPallet,
    List<BagDelivery> deliveries) {

  /** Copies the list. */
  public MaterialOrder {
    deliveries = List.copyOf(deliveries);
  }
}
