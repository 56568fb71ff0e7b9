package dev.fillplane.room;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.finding.Stopped;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Whether the rooms of a request make sense: ids, outlines, rooms that overlap, openings.
 *
 * <p>Everything is an error at its place, except what can be planned all the same: that a doorway
 * does not say into which room, or ends nowhere near it. Rooms without an error have outlines whose
 * {@link Outline#polygon()} is valid in the sense of OGC Simple Features: islands lie inside, touch
 * walls and each other in single points at most, and leave the floor in one piece.
 */
public final class RoomCheck {

  /** Two rooms may share this much floor, as drawn outlines do along a wall; m2. */
  public static final double OVERLAP = 1e-3;

  private final List<Room> rooms;
  private final Place place;
  private final Findings findings;

  private RoomCheck(List<Room> rooms, Place place, Findings findings) {
    this.rooms = rooms;
    this.place = place;
    this.findings = findings;
  }

  /**
   * Adds what is wrong or odd to {@code findings}.
   *
   * @param place where the list of rooms stands in the request
   */
  public static void check(List<Room> rooms, Place place, Findings findings) {
    new RoomCheck(rooms, place, findings).check();
  }

  private void check() {
    Set<String> ids = new HashSet<>();
    for (int r = 0; r < rooms.size(); r++) {
      Stopped.ifInterrupted();
      String id = rooms.get(r).id();
      if (!ids.add(id)) {
        findings.error("room-repeated", place.at(r).at("id"), "room", id);
      }
    }
    Map<Integer, Polygon> valid = new HashMap<>();
    STRtree tree = new STRtree();
    for (int r = 0; r < rooms.size(); r++) {
      Stopped.ifInterrupted();
      Room room = rooms.get(r);
      int number = r;
      new OutlineCheck(room, place.at(r).at("outline"), findings)
          .valid()
          .ifPresent(
              polygon -> {
                valid.put(number, polygon);
                tree.insert(polygon.getEnvelopeInternal(), number);
              });
      new OpeningCheck(room, ids, place.at(r).at("openings"), findings).check();
    }
    overlaps(valid, tree);
    DoorwayCheck.check(rooms, valid, place, findings);
  }

  private void overlaps(Map<Integer, Polygon> valid, STRtree tree) {
    for (int r = 0; r < rooms.size(); r++) {
      Stopped.ifInterrupted();
      if (valid.containsKey(r)) {
        Set<Integer> earlier = new TreeSet<>();
        for (Object near : tree.query(valid.get(r).getEnvelopeInternal())) {
          earlier.add((Integer) near);
        }
        for (int other : earlier) {
          if (other < r) {
            overlap(other, r, valid);
          }
        }
      }
    }
  }

  private void overlap(int one, int other, Map<Integer, Polygon> valid) {
    double area =
        OverlayNGRobust.overlay(valid.get(one), valid.get(other), OverlayNG.INTERSECTION).getArea();
    if (area > OVERLAP) {
      findings.error(
          "rooms-overlap",
          place.at(other).at("outline"),
          "room",
          rooms.get(other).id(),
          "other",
          rooms.get(one).id(),
          "area",
          Amount.of(area, Dimension.AREA));
    }
  }
}
