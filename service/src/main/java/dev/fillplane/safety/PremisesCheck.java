package dev.fillplane.safety;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What of the premises forbids a pour, and what about them was not told. */
public final class PremisesCheck {

  private PremisesCheck() {}

  /** Refuses a base that nothing is poured on. */
  public static void check(Premises premises, Place place, Findings findings) {
    int magnesite = premises.base().indexOf(BaseKind.MAGNESITE);
    if (magnesite >= 0) {
      findings.error("base-magnesite", place.at("base").at(magnesite));
    }
  }

  /** Asks for what decides about the notes and was not told. */
  public static void warnOfTheUnknown(
      Premises premises,
      List<Room> rooms,
      Optional<Boolean> ventilated,
      Place place,
      Findings findings) {
    List<String> names = new ArrayList<>();
    boolean wood =
        rooms.stream().anyMatch(room -> room.substrate().equals(Optional.of(Substrate.WOOD)));
    addIf(premises.jurisdiction().isEmpty(), "country", names);
    addIf(premises.oldCovering().isEmpty() && !premises.isTested(), "old covering", names);
    addIf(ventilated.isEmpty(), "ventilation", names);
    addIf(premises.suspended().isEmpty() && !wood, "whether the floor spans a void", names);
    addIf(
        premises.deadLoadAllowance().isEmpty() && premises.suspended().orElse(true),
        "dead load that the floor may take",
        names);
    addIf(wood && premises.joistSpan().isEmpty(), "span of the joists", names);
    addIf(premises.heater().isEmpty(), "heater", names);
    addIf(premises.solventPrimer().isEmpty(), "solvents in the primer", names);
    addIf(premises.flames().isEmpty(), "gas appliances and pilot lights", names);
    addIf(premises.floorHeating().isEmpty(), "floor heating", names);
    if (!names.isEmpty()) {
      findings.warning("premises-not-told", place, "names", String.join(", ", names));
    }
  }

  private static void addIf(boolean missing, String name, List<String> names) {
    if (missing) {
      names.add(name);
    }
  }
}
