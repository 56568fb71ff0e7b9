package dev.fillplane.safety;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How and where a load is lifted, as far as it decides whether the lifting equation holds. What is
 * not told is taken to suit the equation, and a warning names it.
 *
 * @param load what is lifted
 * @param steps that it is carried between the two ends
 * @param oneHand whether one hand does it
 * @param kneeling whether people sit or kneel
 * @param tightSpace whether people cannot stand and move freely
 * @param slippery whether shoes have a poor hold on the floor (friction under 0.4)
 * @param air temperature of the air
 * @param humidity of the air, 0 to 1
 */
public record LiftingCircumstances(
    Optional<LoadKind> load,
    OptionalInt steps,
    Optional<Boolean> oneHand,
    Optional<Boolean> kneeling,
    Optional<Boolean> tightSpace,
    Optional<Boolean> slippery,
    @Measured(Dimension.TEMPERATURE) OptionalDouble air,
    OptionalDouble humidity) {

  /** Nothing told. */
  public static LiftingCircumstances unknown() {
    return new LiftingCircumstances(
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }
}
