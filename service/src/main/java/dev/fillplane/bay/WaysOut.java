package dev.fillplane.bay;

import dev.fillplane.room.Doorway;
import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds how each room is left: breadth first from the exits over the doorways, which lead both
 * ways. Of two ways with as many doorways the shorter one counts. Rooms that reach no exit are left
 * by an opening of one of them, a threshold before a doorway, or by the middle of the first wall.
 */
final class WaysOut {

  private final List<Room> rooms;
  private final List<List<Doorway>> doorways;
  private final WayOut[] found;
  private final double[] toDoor;

  private WaysOut(List<Room> rooms) {
    this.rooms = rooms;
    this.found = new WayOut[rooms.size()];
    this.toDoor = new double[rooms.size()];
    doorways = Doorway.of(rooms);
  }

  /** The ways out in the order of the pour: farthest room first. */
  static List<WayOut> farthestFirst(List<Room> rooms) {
    WaysOut search = new WaysOut(rooms);
    search.fromExits();
    search.fromAssumedExits();
    return Arrays.stream(search.found)
        .sorted(
            Comparator.comparing(WayOut::known)
                .thenComparing(WayOut::doorways, Comparator.reverseOrder())
                .thenComparing(WayOut::distance, Comparator.reverseOrder()))
        .toList();
  }

  private void fromExits() {
    List<Integer> start = new ArrayList<>();
    for (int i = 0; i < rooms.size(); i++) {
      List<Position> exits =
          rooms.get(i).openings().stream()
              .filter(opening -> opening.kind() == OpeningKind.EXIT)
              .map(Opening::middle)
              .toList();
      if (!exits.isEmpty()) {
        settle(i, 0, 0, exits, true);
        start.add(i);
      }
    }
    spread(start, true);
  }

  private void fromAssumedExits() {
    for (int step = 0; step < 4; step++) {
      for (int i = 0; i < rooms.size(); i++) {
        Position exit = found[i] == null ? assumedExit(rooms.get(i), step) : null;
        if (exit != null) {
          settle(i, 0, 0, List.of(exit), false);
          spread(List.of(i), false);
        }
      }
    }
  }

  // Step by step less likely to be the way out.
  private static Position assumedExit(Room room, int step) {
    if (step == 3) {
      List<Position> wall = room.outline().rings().get(0);
      return new Position(
          (wall.get(0).x() + wall.get(1).x()) / 2, (wall.get(0).y() + wall.get(1).y()) / 2);
    }
    return room.openings().stream()
        .filter(o -> step != 0 || o.kind() == OpeningKind.THRESHOLD)
        .filter(o -> step != 1 || o.into().isEmpty())
        .map(Opening::middle)
        .findFirst()
        .orElse(null);
  }

  private void spread(List<Integer> start, boolean known) {
    List<Integer> ring = start;
    for (int count = 1; !ring.isEmpty(); count++) {
      Map<Integer, Doorway> next = nearest(ring);
      for (Map.Entry<Integer, Doorway> entry : next.entrySet()) {
        Doorway back = entry.getValue();
        settle(entry.getKey(), count, lengthVia(back), List.of(back.place()), known);
      }
      ring = List.copyOf(next.keySet());
    }
  }

  /** For each room next to the ring the doorway back into it on the shortest way. */
  private Map<Integer, Doorway> nearest(List<Integer> ring) {
    Map<Integer, Doorway> next = new LinkedHashMap<>();
    for (int room : ring) {
      for (Doorway doorway : doorways.get(room)) {
        if (found[doorway.to()] == null) {
          next.merge(
              doorway.to(),
              new Doorway(room, doorway.place()),
              (a, b) -> lengthVia(b) < lengthVia(a) ? b : a);
        }
      }
    }
    return next;
  }

  private double lengthVia(Doorway back) {
    return toDoor[back.to()] + nearest(found[back.to()].places(), back.place());
  }

  private void settle(int room, int count, double length, List<Position> places, boolean known) {
    Position middle =
        Travel.position(rooms.get(room).outline().polygon().getCentroid().getCoordinate());
    toDoor[room] = length;
    found[room] = new WayOut(room, count, length + nearest(places, middle), places, known);
  }

  private static double nearest(List<Position> places, Position to) {
    return places.stream().mapToDouble(to::distance).min().orElse(0);
  }
}
