package dev.fillplane.room;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Whether doorways reach the rooms that they are said to lead into. */
final class DoorwayCheck {

  /** Thicker than this no wall is. */
  static final double THICKEST_WALL = 0.6;

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private DoorwayCheck() {}

  /**
   * Warns of doorways that end nowhere near the other room.
   *
   * @param valid the outlines that hold, by the number of the room
   */
  static void check(List<Room> rooms, Map<Integer, Polygon> valid, Place place, Findings findings) {
    for (int i = 0; i < rooms.size(); i++) {
      List<Opening> openings = rooms.get(i).openings();
      for (int j = 0; j < openings.size(); j++) {
        double off = off(openings.get(j), rooms, valid);
        if (off > THICKEST_WALL && Double.isFinite(off)) {
          findings.warning(
              "doorway-does-not-meet",
              place.at(i).at("openings").at(j),
              "opening",
              openings.get(j).id(),
              "room",
              rooms.get(i).id(),
              "into",
              openings.get(j).into().orElse(""),
              "off",
              Amount.of(off, Dimension.PLAN));
        }
      }
    }
  }

  /** From the middle of a doorway to the room that it leads into; 0 where that is not known. */
  private static double off(Opening opening, List<Room> rooms, Map<Integer, Polygon> valid) {
    if (opening.kind() != OpeningKind.DOORWAY || opening.into().isEmpty()) {
      return 0;
    }
    Position middle = opening.middle();
    Point place = GEOMETRY.createPoint(new Coordinate(middle.x(), middle.y()));
    for (int other = 0; other < rooms.size(); other++) {
      if (valid.containsKey(other) && rooms.get(other).id().equals(opening.into().get())) {
        return valid.get(other).distance(place);
      }
    }
    return 0;
  }
}
