package dev.fillplane.safety;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What of the place can hurt somebody. What is not told counts as unknown, never as safe.
 *
 * @param jurisdiction whose limits hold
 * @param oldCovering what lies or lay on the base
 * @param tested whether a laboratory found neither asbestos nor lead
 * @param suspended whether the floor spans a void
 * @param deadLoadAllowance what the floor may take in more dead load, as an engineer or the
 *     drawings say
 * @param joistSpan longest free span of wood joists
 * @param heater what warms the place
 * @param solventPrimer whether the primer holds solvents
 * @param flames whether gas appliances or pilot lights are near
 * @param floorHeating whether the floor is heated
 * @param base what the base is found to be; nothing that asks for more
 */
public record Premises(
    Optional<Jurisdiction> jurisdiction,
    Optional<OldCovering> oldCovering,
    Optional<Boolean> tested,
    Optional<Boolean> suspended,
    @Measured(Dimension.SURFACE_LOAD) OptionalDouble deadLoadAllowance,
    @Measured(Dimension.PLAN) OptionalDouble joistSpan,
    Optional<Heater> heater,
    Optional<Boolean> solventPrimer,
    Optional<Boolean> flames,
    Optional<FloorHeating> floorHeating,
    List<BaseKind> base) {

  /** A common design value for all dead load of a light floor, 10 psf. */
  public static final double USUAL_DEAD_LOAD = Load.ofPoundsPerSquareFoot(10).si();

  /** Fills in what was left out. */
  public Premises {
    base = base == null ? List.of() : List.copyOf(base);
  }

  /** Nothing told. */
  public static Premises unknown() {
    return new Premises(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        null);
  }

  boolean isTested() {
    return tested.orElse(false);
  }

  boolean hasFlames() {
    return flames.orElse(false);
  }

  boolean hadResilient() {
    return oldCovering.equals(Optional.of(OldCovering.RESILIENT));
  }
}
