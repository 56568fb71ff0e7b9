package dev.fillplane.safety;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Load;
import dev.fillplane.quantity.Measured;
import dev.fillplane.room.BaseKind;
import dev.fillplane.room.OldCovering;
import dev.fillplane.room.Room;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What of the place can hurt somebody. What is not told counts as unknown, never as safe.
 *
 * @param jurisdiction whose limits hold
 * @param oldCovering what lies or lay on the base, where a room does not tell its own
 * @param tested whether a laboratory found neither asbestos nor lead
 * @param suspended whether the floor spans a void
 * @param deadLoadAllowance what the floor may take in more dead load, as an engineer or the
 *     drawings say
 * @param joistSpan longest free span of wood joists
 * @param joistSpacing from the middle of one joist to that of the next
 * @param sag how far the floor hangs in the middle of its span before anything is poured
 * @param structure what was found of the structure; empty where nothing was
 * @param stoneCovering whether stone comes on top
 * @param heater what warms the place
 * @param solventPrimer whether the primer holds solvents
 * @param isolatingPrimer whether a primer that isolates comes onto bases of gypsum
 * @param flames whether gas appliances or pilot lights are near
 * @param floorHeating whether the floor is heated
 * @param base what the base is found to be, where a room does not tell its own; empty where it is
 *     none of these
 */
public record Premises(
    Optional<Jurisdiction> jurisdiction,
    Optional<OldCovering> oldCovering,
    Optional<Boolean> tested,
    Optional<Boolean> suspended,
    @Measured(Dimension.SURFACE_LOAD) OptionalDouble deadLoadAllowance,
    @Measured(Dimension.PLAN) OptionalDouble joistSpan,
    @Measured(Dimension.HEIGHT) OptionalDouble joistSpacing,
    @Measured(Dimension.HEIGHT) OptionalDouble sag,
    Optional<List<StructureKind>> structure,
    Optional<Boolean> stoneCovering,
    Optional<Heater> heater,
    Optional<Boolean> solventPrimer,
    Optional<Boolean> isolatingPrimer,
    Optional<Boolean> flames,
    Optional<FloorHeating> floorHeating,
    Optional<List<BaseKind>> base) {

  /** A common design value for all dead load of a light floor, 10 psf. */
  public static final double USUAL_DEAD_LOAD = Load.ofPoundsPerSquareFoot(10).si();

  /** Copies the lists. */
  public Premises {
    structure = structure.map(List::copyOf);
    base = base.map(List::copyOf);
  }

  /** Nothing told. */
  public static Premises unknown() {
    OptionalDouble none = OptionalDouble.empty();
    return new Premises(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        none,
        none,
        none,
        none,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The rooms, each with what is told of the whole place where it tells nothing of its own. */
  public List<Room> of(List<Room> rooms) {
    return rooms.stream().map(room -> room.orAs(base, oldCovering)).toList();
  }

  boolean isTested() {
    return tested.orElse(false);
  }

  boolean hasFlames() {
    return flames.orElse(false);
  }

  boolean hasStone() {
    return stoneCovering.orElse(false);
  }

  boolean has(StructureKind kind) {
    return structure.filter(kinds -> kinds.contains(kind)).isPresent();
  }
}
