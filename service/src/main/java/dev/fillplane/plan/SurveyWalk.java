package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import dev.fillplane.surface.PlannedSpot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * In which order places are walked: room after room as their doorways lead on from the exit, and in
 * each room from the door to the nearest place next, mended by turning parts round (2-opt) until no
 * turn shortens it. Lengths are straight within a room and go through the doorways between rooms;
 * walls that jut out and islands are not walked round.
 */
final class SurveyWalk {

  /** Rounds of mending at most. */
  private static final int ROUNDS = 50;

  private static final double SHORTER = 1e-9;

  private final List<Room> rooms;
  private final List<PlannedSpot> spots;
  private final RoomWays ways;
  private final List<SurveyStop> stops = new ArrayList<>();
  private double length;

  private SurveyWalk(List<Room> rooms, List<PlannedSpot> spots) {
    this.rooms = rooms;
    this.spots = spots;
    this.ways = new RoomWays(rooms);
  }

  static SurveyWalk over(List<Room> rooms, List<PlannedSpot> spots, Findings findings) {
    SurveyWalk walk = new SurveyWalk(rooms, spots);
    if (!walk.ways.hasExit()) {
      findings.warning(
          "walk-without-exit", Place.root().at("rooms"), "room", rooms.get(walk.ways.first()).id());
    }
    walk.go();
    return walk;
  }

  List<SurveyStop> stops() {
    return stops;
  }

  double length() {
    return length;
  }

  private void go() {
    Position at = ways.start();
    int from = ways.first();
    for (int room : ways.order()) {
      int here = room;
      List<PlannedSpot> left = spots.stream().filter(spot -> spot.room() == here).toList();
      if (left.isEmpty()) {
        continue;
      }
      for (Position door : ways.doorsBetween(from, room)) {
        length += at.distance(door);
        at = door;
      }
      for (PlannedSpot spot : mended(at, nearestNext(at, left))) {
        Position next = position(spot);
        length += at.distance(next);
        at = next;
        stops.add(
            new SurveyStop(stops.size() + 1, spot.x(), spot.y(), rooms.get(room).id(), spot.why()));
      }
      from = room;
    }
  }

  private static List<PlannedSpot> nearestNext(Position start, List<PlannedSpot> spots) {
    List<PlannedSpot> left = new ArrayList<>(spots);
    List<PlannedSpot> path = new ArrayList<>();
    Position at = start;
    while (!left.isEmpty()) {
      int nearest = 0;
      for (int i = 1; i < left.size(); i++) {
        double gain = at.distance(position(left.get(nearest))) - at.distance(position(left.get(i)));
        nearest = gain > SHORTER ? i : nearest;
      }
      path.add(left.remove(nearest));
      at = position(path.get(path.size() - 1));
    }
    return path;
  }

  /** The start stays, the end is free. */
  private static List<PlannedSpot> mended(Position start, List<PlannedSpot> path) {
    boolean shorter = true;
    for (int round = 0; round < ROUNDS && shorter; round++) {
      shorter = false;
      for (int i = 0; i < path.size() - 1; i++) {
        for (int j = i + 1; j < path.size(); j++) {
          if (gain(start, path, i, j) > SHORTER) {
            Collections.reverse(path.subList(i, j + 1));
            shorter = true;
          }
        }
      }
    }
    return path;
  }

  /** What turning the part from i to j round would save. */
  private static double gain(Position start, List<PlannedSpot> path, int i, int j) {
    Position before = i == 0 ? start : position(path.get(i - 1));
    Position first = position(path.get(i));
    Position last = position(path.get(j));
    double gain = before.distance(first) - before.distance(last);
    if (j + 1 < path.size()) {
      Position after = position(path.get(j + 1));
      gain += last.distance(after) - first.distance(after);
    }
    return gain;
  }

  private static Position position(PlannedSpot spot) {
    return new Position(spot.x(), spot.y());
  }
}
