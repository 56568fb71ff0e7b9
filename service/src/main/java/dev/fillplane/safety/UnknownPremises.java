package dev.fillplane.safety;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Asks for what decides about the notes and was not told. */
public final class UnknownPremises {

  private final Premises premises;
  private final List<Room> rooms;
  private final List<String> names = new ArrayList<>();

  private UnknownPremises(Premises premises, List<Room> rooms) {
    this.premises = premises;
    this.rooms = premises.of(rooms);
  }

  /**
   * Warns in one sentence of all that is missing.
   *
   * @param rooms as they are told
   * @param place of the premises in the request
   */
  public static void warn(
      Premises premises,
      List<Room> rooms,
      Optional<Boolean> ventilated,
      Place place,
      Findings findings) {
    List<String> names = new UnknownPremises(premises, rooms).names(ventilated.isPresent());
    if (!names.isEmpty()) {
      findings.warning("premises-not-told", place, "names", String.join(", ", names));
    }
  }

  private List<String> names(boolean ventilationTold) {
    addIf(premises.jurisdiction().isEmpty(), "country");
    if (!premises.isTested()) {
      addRooms("old covering", room -> room.oldCovering().isEmpty());
    }
    addRooms("state of the base", room -> room.base().isEmpty());
    addIf(!ventilationTold, "ventilation");
    structure();
    addIf(premises.heater().isEmpty(), "heater");
    addIf(premises.solventPrimer().isEmpty(), "solvents in the primer");
    addIf(premises.flames().isEmpty(), "gas appliances and pilot lights");
    addIf(premises.floorHeating().isEmpty(), "floor heating");
    return names;
  }

  private void structure() {
    boolean wood = rooms.stream().anyMatch(room -> room.isOf(Substrate.WOOD));
    boolean spans = premises.suspended().orElse(true) || wood;
    addIf(premises.suspended().isEmpty() && !wood, "whether the floor spans a void");
    addIf(spans && premises.deadLoadAllowance().isEmpty(), "dead load that the floor may take");
    boolean spanWanted = wood || premises.sag().isPresent() || premises.hasStone();
    addIf(spanWanted && premises.joistSpan().isEmpty(), "span of the joists");
    addIf(premises.structure().isEmpty(), "cracks, damage and heavy things (structure)");
    addIf(spans && premises.stoneCovering().isEmpty(), "whether stone comes on top");
  }

  private void addIf(boolean missing, String name) {
    if (missing) {
      names.add(name);
    }
  }

  private void addRooms(String name, Predicate<Room> lacks) {
    List<Room> lacking = rooms.stream().filter(lacks).toList();
    String where = lacking.stream().map(Room::id).collect(Collectors.joining(", "));
    addIf(!lacking.isEmpty(), lacking.size() == rooms.size() ? name : name + " in " + where);
  }
}
