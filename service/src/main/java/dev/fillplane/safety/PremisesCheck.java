package dev.fillplane.safety;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.Binder;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.BaseKind;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import dev.fillplane.supply.Minimums;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What of premises and rooms forbids a pour (common practice, no source): bases that nothing is
 * poured on, cement on gypsum without a primer that isolates, floor heating that is on, a thin pour
 * on insulation.
 */
public final class PremisesCheck {

  private static final Map<BaseKind, String> REFUSED =
      new EnumMap<>(Map.of(BaseKind.MAGNESITE, "base-magnesite", BaseKind.BOUNCY, "base-bouncy"));

  /** Room for the last digits of a depth. */
  private static final double ROUNDING = 1e-6;

  private final Premises premises;
  private final List<Room> rooms;
  private final Place root;
  private final Findings findings;

  private PremisesCheck(Premises premises, List<Room> rooms, Place root, Findings findings) {
    this.premises = premises;
    this.rooms = rooms;
    this.root = root;
    this.findings = findings;
  }

  /**
   * Refuses what can be told before anything is computed.
   *
   * @param rooms as they are told
   * @param root place of the request
   */
  public static void check(
      Premises premises, List<Room> rooms, DataSheet sheet, Place root, Findings findings) {
    new PremisesCheck(premises, rooms, root, findings).check(sheet.binder());
  }

  private void check(Binder binder) {
    Place base = root.at("premises").at("base");
    if (rooms.stream().anyMatch(room -> room.base().isEmpty())) {
      premises.base().ifPresent(kinds -> bases(kinds, base));
    }
    for (int i = 0; i < rooms.size(); i++) {
      Place place = root.at("rooms").at(i);
      rooms.get(i).base().ifPresent(kinds -> bases(kinds, place.at("base")));
      gypsum(rooms.get(i), binder, place.at("substrate"));
    }
    if (premises.floorHeating().equals(Optional.of(FloorHeating.ON))) {
      findings.error("heated-floor-on", root.at("premises").at("floorHeating"));
    }
  }

  private void bases(List<BaseKind> kinds, Place place) {
    for (int i = 0; i < kinds.size(); i++) {
      if (REFUSED.containsKey(kinds.get(i))) {
        findings.error(REFUSED.get(kinds.get(i)), place.at(i));
      }
    }
  }

  private void gypsum(Room room, Binder binder, Place place) {
    boolean bare = premises.isolatingPrimer().equals(Optional.of(false));
    if (bare && binder == Binder.CEMENT && room.isOf(Substrate.GYPSUM)) {
      findings.error("gypsum-not-isolated", place, "room", room.id());
    }
  }

  /**
   * Refuses a pour that is too thin on insulation, at its room.
   *
   * @param pours in the order of the rooms, with all that is known of their bases
   * @param rooms place of the rooms in the request
   */
  public static void checkDepths(List<RoomPour> pours, Place rooms, Findings findings) {
    for (int i = 0; i < pours.size(); i++) {
      RoomPour pour = pours.get(i);
      boolean floats = pour.isPoured() && pour.room().hasBase(BaseKind.INSULATION);
      if (floats && pour.depths().minimum() < Minimums.FLOATING - ROUNDING) {
        findings.error(
            "thin-on-insulation",
            rooms.at(i),
            "room",
            pour.room().id(),
            "depth",
            Amount.of(Math.max(0, pour.depths().minimum()), Dimension.HEIGHT),
            "least",
            Amount.of(Minimums.FLOATING, Dimension.HEIGHT));
      }
    }
  }
}
