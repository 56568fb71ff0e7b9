package dev.fillplane.safety;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * A lift that is done again and again with both hands.
 *
 * @param mass of the load; positive
 * @param origin where it is taken up
 * @param destination where it is set down
 * @param liftsPerMinute on average over 15 minutes; not negative
 * @param hours that it is done; over 0 to 8
 * @param coupling of hands and load
 * @param control whether the load is set down with care, so that the destination counts too
 */
public record LiftingTask(
    @Measured(Dimension.MASS) double mass,
    HandPosition origin,
    HandPosition destination,
    double liftsPerMinute,
    double hours,
    Coupling coupling,
    boolean control) {

  /** Refuses what the equation does not cover. */
  public LiftingTask {
    if (!(mass > 0 && liftsPerMinute >= 0 && hours > 0 && hours <= 8)) {
      throw new IllegalArgumentException(mass + " kg, " + liftsPerMinute + "/min, " + hours + " h");
    }
  }
}
