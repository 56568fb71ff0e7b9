package dev.fillplane.target;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The plane of the finished pour, or the planes where rooms have their own.
 *
 * @param elevation elevation at the plan origin; empty where rooms have planes of their own
 * @param slopeX rise along x; empty likewise
 * @param slopeY rise along y; empty likewise
 * @param planes each with its rooms; one where all rooms share it
 * @param boundBy what holds them there; empty for a given target
 * @param bareOdds chance that the floor shows through somewhere
 * @param guardHeight height that the target would have to be raised by, so that the floor stays
 *     covered everywhere with the chance that was asked
 */
public record TargetSummary(
    TargetShape shape,
    @Measured(Dimension.HEIGHT) OptionalDouble elevation,
    @Measured(Dimension.SLOPE) OptionalDouble slopeX,
    @Measured(Dimension.SLOPE) OptionalDouble slopeY,
    List<RoomsPlane> planes,
    List<Bound> boundBy,
    double bareOdds,
    @Measured(Dimension.HEIGHT) double guardHeight) {

  /** Copies the lists. */
  public TargetSummary {
    planes = List.copyOf(planes);
    boundBy = List.copyOf(boundBy);
  }

  /** Summary of planes with their rooms. */
  public static TargetSummary of(
      TargetShape shape, List<RoomsPlane> planes, double bareOdds, double guardHeight) {
    Optional<RoomsPlane> one = planes.size() == 1 ? Optional.of(planes.get(0)) : Optional.empty();
    return new TargetSummary(
        shape,
        told(one, RoomsPlane::elevation),
        told(one, RoomsPlane::slopeX),
        told(one, RoomsPlane::slopeY),
        planes,
        planes.stream().flatMap(plane -> plane.boundBy().stream()).toList(),
        bareOdds,
        guardHeight);
  }

  private static OptionalDouble told(Optional<RoomsPlane> one, ToDoubleFunction<RoomsPlane> value) {
    return one.isPresent()
        ? OptionalDouble.of(value.applyAsDouble(one.get()))
        : OptionalDouble.empty();
  }
}
