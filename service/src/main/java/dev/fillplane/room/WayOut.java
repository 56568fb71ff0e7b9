package dev.fillplane.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where people leave the floor.
 *
 * @param room the room that is left
 * @param opening its opening; none where a wall stands for it
 * @param from one end
 * @param to the other end
 * @param assumed whether the request did not say so
 */
public record WayOut(
    String room, Optional<String> opening, Position from, Position to, boolean assumed) {

  /**
   * All exits in the order of the request. Without any it is assumed that people leave through the
   * last doorway, or else along the first side of the first room. Empty only if there is no side.
   */
  public static List<WayOut> of(List<Room> rooms) {
    List<WayOut> exits = through(OpeningKind.EXIT, rooms, false);
    if (!exits.isEmpty()) {
      return exits;
    }
    List<WayOut> doorways = through(OpeningKind.DOORWAY, rooms, true);
    return doorways.isEmpty() ? firstSide(rooms) : List.of(doorways.get(doorways.size() - 1));
  }

  private static List<WayOut> through(OpeningKind kind, List<Room> rooms, boolean assumed) {
    List<WayOut> ways = new ArrayList<>();
    for (Room room : rooms) {
      for (Opening one : room.openings()) {
        if (one.kind() == kind) {
          ways.add(new WayOut(room.id(), Optional.of(one.id()), one.from(), one.to(), assumed));
        }
      }
    }
    return ways;
  }

  private static List<WayOut> firstSide(List<Room> rooms) {
    if (rooms.isEmpty() || rooms.get(0).outline().rings().isEmpty()) {
      return List.of();
    }
    List<Position> ring = rooms.get(0).outline().rings().get(0);
    return ring.size() < 2
        ? List.of()
        : List.of(new WayOut(rooms.get(0).id(), Optional.empty(), ring.get(0), ring.get(1), true));
  }
}
