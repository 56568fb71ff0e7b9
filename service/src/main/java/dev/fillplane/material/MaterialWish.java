package dev.fillplane.material;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The underlayment as the caller tells it: the values of its data sheet, or the id of a sheet of
 * the catalogue whose values hold where none is told here. Components are those of {@link
 * DataSheet}.
 */
public record MaterialWish(
    Optional<String> id,
    Optional<Binder> binder,
    @Measured(Dimension.MASS) OptionalDouble bagMass,
    @Measured(Dimension.LIQUID) OptionalDouble waterPerBag,
    Optional<WaterRange> waterRange,
    @Measured(Dimension.FILL) OptionalDouble yieldPerBag,
    @Measured(Dimension.DENSITY) OptionalDouble wetDensity,
    @Measured(Dimension.HEIGHT) OptionalDouble minimumLift,
    @Measured(Dimension.HEIGHT) OptionalDouble maximumLift,
    Optional<Aggregate> aggregate,
    @Measured(Dimension.TIME) OptionalDouble workingTime,
    @Measured(Dimension.TIME) OptionalDouble healingTime,
    @Measured(Dimension.TEMPERATURE) OptionalDouble workingTimeAt,
    Optional<TemperatureRange> temperatureRange,
    @Measured(Dimension.TIME) OptionalDouble mixTime,
    @Measured(Dimension.COVERAGE) OptionalDouble primerCoverage,
    @Measured(Dimension.TIME) OptionalDouble walkOn,
    @Measured(Dimension.TIME) OptionalDouble coveringAfter) {

  /** Nothing told: the usual sheet of the catalogue. */
  public static MaterialWish usual() {
    OptionalDouble none = OptionalDouble.empty();
    return new MaterialWish(
        Optional.empty(),
        Optional.empty(),
        none,
        none,
        Optional.empty(),
        none,
        none,
        none,
        none,
        Optional.empty(),
        none,
        none,
        none,
        Optional.empty(),
        none,
        none,
        none,
        none);
  }
}
