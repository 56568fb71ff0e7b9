package dev.fillplane.estimate;

import dev.fillplane.plan.PlannedUnit;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.supply.BagOdds;
import java.util.Optional;

/**
 * What an order needs to know of one planned unit; small, so that thousands can be kept.
 *
 * @param material tells materials apart: units with the same text are poured from one lot
 * @param name id of the material in the catalogue, if it came from there
 * @param bagMass powder in a bag
 * @param waterPerBag mix water for a bag
 * @param primer for the unit
 * @param confidence at which the plan of the unit orders
 * @param order bags that the plan orders
 * @param needs evenly likely numbers of bags from a usual lot, not rounded, in rising order
 */
public record UnitNeed(
    String material,
    Optional<String> name,
    @Measured(Dimension.MASS) double bagMass,
    @Measured(Dimension.LIQUID) double waterPerBag,
    @Measured(Dimension.LIQUID) double primer,
    double confidence,
    int order,
    double[] needs) {

  /** How many numbers stand for the odds of a unit. */
  public static final int POINTS = 64;

  /** The need of a planned unit. */
  public static UnitNeed of(PlannedUnit unit) {
    var quantities = unit.plan().quantities();
    return new UnitNeed(
        unit.sheet().toString(),
        unit.sheet().id(),
        unit.sheet().bagMass(),
        unit.sheet().waterPerBag(),
        quantities.primer().liquid(),
        unit.confidence(),
        quantities.bags().order(),
        BagOdds.inUsualLot(
            unit.draws().volumes(), unit.draws().wetAreas(), unit.sheet(), POINTS, unit.seed()));
  }
}
