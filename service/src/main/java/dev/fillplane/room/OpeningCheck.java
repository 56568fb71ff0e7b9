package dev.fillplane.room;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;

/** Whether the openings of a room lie in its walls and lead somewhere. */
final class OpeningCheck {

  /** How far beside the outline an end of an opening may lie. */
  static final double OFF_OUTLINE = 0.01;

  /** An opening narrower than this is none. */
  static final double NARROWEST = 0.001;

  private final Room room;
  private final Set<String> rooms;
  private final Place place;
  private final Findings findings;

  OpeningCheck(Room room, Set<String> rooms, Place place, Findings findings) {
    this.room = room;
    this.rooms = rooms;
    this.place = place;
    this.findings = findings;
  }

  void check() {
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < room.openings().size(); i++) {
      Opening opening = room.openings().get(i);
      if (!ids.add(opening.id())) {
        error("opening-repeated", place.at(i).at("id"), opening);
      }
      if (!(opening.width() >= NARROWEST)) {
        error("opening-without-width", place.at(i), opening);
      }
      end(opening.from(), place.at(i).at("from"), opening);
      end(opening.to(), place.at(i).at("to"), opening);
      if (opening.kind() == OpeningKind.DOORWAY) {
        into(opening, place.at(i));
      }
    }
  }

  private void error(String code, Place there, Opening opening) {
    findings.error(code, there, "opening", opening.id(), "room", room.id());
  }

  private void end(Position end, Place there, Opening opening) {
    double off = distanceToOutline(end);
    if (off > OFF_OUTLINE && Double.isFinite(off)) {
      findings.error(
          "opening-off-outline",
          there,
          "opening",
          opening.id(),
          "room",
          room.id(),
          "off",
          Amount.of(off, Dimension.PLAN));
    }
  }

  /** Infinite without any side. */
  private double distanceToOutline(Position position) {
    double nearest = Double.POSITIVE_INFINITY;
    for (List<Position> ring : room.outline().rings()) {
      for (int i = 1; i < ring.size(); i++) {
        double distance =
            Distance.pointToSegment(at(position), at(ring.get(i - 1)), at(ring.get(i)));
        nearest = Math.min(nearest, distance);
      }
    }
    return nearest;
  }

  private static Coordinate at(Position position) {
    return new Coordinate(position.x(), position.y());
  }

  private void into(Opening opening, Place there) {
    if (opening.into().isEmpty()) {
      findings.warning("doorway-without-room", there, "opening", opening.id(), "room", room.id());
      return;
    }
    String into = opening.into().get();
    if (into.equals(room.id())) {
      error("doorway-into-itself", there.at("into"), opening);
    } else if (!rooms.contains(into)) {
      findings.error(
          "doorway-into-unknown-room",
          there.at("into"),
          "opening",
          opening.id(),
          "room",
          room.id(),
          "into",
          into);
    }
  }
}
