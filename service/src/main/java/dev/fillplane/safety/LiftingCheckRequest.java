package dev.fillplane.safety;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.quantity.UnitSystem;

/**
 * A lift that is done again and again.
 *
 * @param units the caller's units
 * @param mass of the load; positive
 * @param origin where it is taken up
 * @param destination where it is set down
 * @param liftsPerMinute of one person, on average over 15 minutes
 * @param hours of a day that it is done; over 0
 * @param coupling of hands and load; poor, as a paper bag is
 * @param control whether the load is set down with care; yes
 * @param circumstances that decide whether the equation holds; unknown
 */
public record LiftingCheckRequest(
    UnitSystem units,
    @Measured(Dimension.MASS) double mass,
    HandPosition origin,
    HandPosition destination,
    double liftsPerMinute,
    double hours,
    Coupling coupling,
    Boolean control,
    LiftingCircumstances circumstances) {

  /** Hours of a day that the equation knows. */
  static final int LONGEST_HOURS = 8;

  /** Fills in what was left out. */
  public LiftingCheckRequest {
    coupling = coupling == null ? Coupling.POOR : coupling;
    control = control == null ? Boolean.TRUE : control;
    circumstances = circumstances == null ? LiftingCircumstances.unknown() : circumstances;
  }

  /** As the equation takes it, which knows no more than 8 hours. */
  LiftingTask task() {
    double within = Math.min(hours, LONGEST_HOURS);
    return new LiftingTask(mass, origin, destination, liftsPerMinute, within, coupling, control);
  }

  boolean isOverlong() {
    return hours > LONGEST_HOURS;
  }
}
