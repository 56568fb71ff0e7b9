package dev.fillplane.target;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;

/** Warns of doorways on whose sides the target lies at different heights. */
final class DoorSteps {

  /** A smaller step is within what a pour can be placed to; our choice. */
  private static final double LEAST = 0.0005;

  private DoorSteps() {}

  static void warn(FoundTarget target, List<Room> rooms, Findings findings) {
    List<String> ids = rooms.stream().map(Room::id).toList();
    for (int i = 0; i < rooms.size(); i++) {
      List<Opening> openings = rooms.get(i).openings();
      for (int j = 0; j < openings.size(); j++) {
        int other = openings.get(j).into().map(ids::indexOf).orElse(-1);
        if (openings.get(j).kind() == OpeningKind.DOORWAY && other >= 0) {
          Place place = Place.root().at("rooms").at(i).at("openings").at(j);
          warn(openings.get(j), target.plane(i), target.plane(other), place, findings);
        }
      }
    }
  }

  private static void warn(Opening door, Plane here, Plane there, Place place, Findings findings) {
    Position middle = door.middle();
    double step = Math.abs(here.at(middle.x(), middle.y()) - there.at(middle.x(), middle.y()));
    if (step > LEAST) {
      findings.warning(
          "step-at-doorway",
          place,
          "opening",
          door.id(),
          "height",
          Amount.of(step, Dimension.HEIGHT),
          "into",
          door.into().orElse(""));
    }
  }
}
