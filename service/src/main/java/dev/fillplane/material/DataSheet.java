package dev.fillplane.material;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.Optional;

/**
 * What the plan uses of an underlayment's data sheet, complete and consistent.
 *
 * @param id its id in the catalogue, if it came from there
 * @param binder what makes it set
 * @param bagMass powder in a bag
 * @param waterPerBag mix water for a bag
 * @param waterRange mix water that the sheet allows
 * @param yieldPerBag fresh underlayment that a bag makes
 * @param wetDensity density of the fresh mix
 * @param minimumLift thinnest layer; 0 for one rated to a feather edge
 * @param maximumLift thickest layer
 * @param aggregate what it may be stretched with in deep pours; empty where the sheet allows none
 * @param workingTime time from water on powder until it no longer flows together
 * @param healingTime time until a cut no longer closes (ASTM C1708)
 * @param workingTimeAt temperature at which both hold
 * @param temperatureRange temperatures of air, slab and mix that it allows
 * @param mixTime time under the mixer
 * @param primerCoverage area that a volume of primer covers in one coat on a normal base
 * @param walkOn time until people may walk on it, at workingTimeAt
 * @param coveringAfter time until it may be covered, at workingTimeAt
 */
public record DataSheet(
    Optional<String> id,
    Binder binder,
    @Measured(Dimension.MASS) double bagMass,
    @Measured(Dimension.LIQUID) double waterPerBag,
    WaterRange waterRange,
    @Measured(Dimension.FILL) double yieldPerBag,
    @Measured(Dimension.DENSITY) double wetDensity,
    @Measured(Dimension.HEIGHT) double minimumLift,
    @Measured(Dimension.HEIGHT) double maximumLift,
    Optional<Aggregate> aggregate,
    @Measured(Dimension.TIME) double workingTime,
    @Measured(Dimension.TIME) double healingTime,
    @Measured(Dimension.TEMPERATURE) double workingTimeAt,
    TemperatureRange temperatureRange,
    @Measured(Dimension.TIME) double mixTime,
    @Measured(Dimension.COVERAGE) double primerCoverage,
    @Measured(Dimension.TIME) double walkOn,
    @Measured(Dimension.TIME) double coveringAfter) {

  /** The same sheet with another yield of a bag. */
  public DataSheet yielding(double volume) {
    return new DataSheet(
        id,
        binder,
        bagMass,
        waterPerBag,
        waterRange,
        volume,
        wetDensity,
        minimumLift,
        maximumLift,
        aggregate,
        workingTime,
        healingTime,
        workingTimeAt,
        temperatureRange,
        mixTime,
        primerCoverage,
        walkOn,
        coveringAfter);
  }
}
