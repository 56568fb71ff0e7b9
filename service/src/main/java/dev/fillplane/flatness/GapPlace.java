package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.room.Position;
import java.util.OptionalDouble;

/**
 * A place of a gap: along a measured line, or on plan.
 *
 * @param along distance from the first reading of the line
 * @param x on plan
 * @param y on plan
 */
public record GapPlace(
    @Measured(Dimension.PLAN) OptionalDouble along,
    @Measured(Dimension.PLAN) OptionalDouble x,
    @Measured(Dimension.PLAN) OptionalDouble y) {

  static GapPlace along(Position place) {
    return new GapPlace(
        OptionalDouble.of(place.x()), OptionalDouble.empty(), OptionalDouble.empty());
  }

  static GapPlace onPlan(Position place) {
    return new GapPlace(
        OptionalDouble.empty(), OptionalDouble.of(place.x()), OptionalDouble.of(place.y()));
  }
}
