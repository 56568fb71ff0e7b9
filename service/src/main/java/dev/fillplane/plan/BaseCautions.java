package dev.fillplane.plan;

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
import java.util.List;

/** What the base of each room asks for before it is primed (common practice, no source). */
final class BaseCautions {

  private static final Place ROOMS = Place.root().at("rooms");

  private BaseCautions() {}

  static void warn(PlanRequest request, DataSheet sheet, Findings findings) {
    List<Room> rooms = request.premises().of(request.rooms());
    boolean isolated = request.premises().isolatingPrimer().orElse(false);
    for (int i = 0; i < rooms.size(); i++) {
      Place place = ROOMS.at(i);
      Room room = rooms.get(i);
      if (room.substrate().isEmpty()) {
        findings.warning("substrate-unknown", place, "room", room.id());
      }
      if (room.built().isEmpty()) {
        findings.warning("age-unknown", place, "room", room.id());
      }
      boolean debonds = sheet.binder() == Binder.CEMENT && !isolated;
      room.substrate()
          .ifPresent(base -> warn(room, base, debonds, place.at("substrate"), findings));
      if (room.hasBase(BaseKind.INSULATION)) {
        Amount least = Amount.of(Minimums.FLOATING, Dimension.HEIGHT);
        findings.warning("insulation-base", place, "room", room.id(), "minimum", least);
      }
    }
  }

  private static void warn(
      Room room, Substrate base, boolean debonds, Place place, Findings findings) {
    if (base == Substrate.GYPSUM && debonds) {
      findings.warning("cement-on-gypsum", place, "room", room.id());
    } else if (base == Substrate.GYPSUM) {
      findings.warning("gypsum-base", place, "room", room.id());
    } else if (base == Substrate.TILE) {
      findings.warning("tile-base", place, "room", room.id());
    } else if (base == Substrate.WOOD) {
      Amount least = Amount.of(Minimums.ON_WOOD, Dimension.HEIGHT);
      findings.warning("wood-base", place, "room", room.id(), "minimum", least);
    }
  }
}
