package dev.fillplane.plan;

import dev.fillplane.room.Doorway;
import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * How one comes from room to room: doorways lead both ways. A walk starts at the first exit, else
 * at the first opening, else at the first corner, and goes on through each doorway in the order in
 * which the request tells them, a room behind a doorway before the next doorway. Rooms that no
 * doorway leads to come last.
 */
final class RoomWays {

  private final List<Room> rooms;
  private final List<List<Doorway>> doorways;
  private final boolean exit;
  private final int first;
  private final Position start;

  RoomWays(List<Room> rooms) {
    this.rooms = rooms;
    doorways = Doorway.of(rooms);
    int exitRoom = roomWith(true);
    exit = exitRoom >= 0;
    int told = exit ? exitRoom : roomWith(false);
    first = Math.max(0, told);
    start =
        opening(rooms.get(first), exit)
            .map(Opening::middle)
            .orElse(rooms.get(first).outline().rings().get(0).get(0));
  }

  private int roomWith(boolean exits) {
    for (int i = 0; i < rooms.size(); i++) {
      if (opening(rooms.get(i), exits).isPresent()) {
        return i;
      }
    }
    return -1;
  }

  private static Optional<Opening> opening(Room room, boolean exits) {
    return room.openings().stream()
        .filter(opening -> !exits || opening.kind() == OpeningKind.EXIT)
        .findFirst();
  }

  boolean hasExit() {
    return exit;
  }

  /** The room of the start. */
  int first() {
    return first;
  }

  Position start() {
    return start;
  }

  /** Every room once. */
  List<Integer> order() {
    List<Integer> order = new ArrayList<>();
    boolean[] seen = new boolean[rooms.size()];
    enter(first, seen, order);
    for (int i = 0; i < rooms.size(); i++) {
      enter(i, seen, order);
    }
    return order;
  }

  private void enter(int from, boolean[] seen, List<Integer> order) {
    Deque<Integer> next = new ArrayDeque<>(List.of(from));
    while (!next.isEmpty()) {
      int room = next.pop();
      if (!seen[room]) {
        seen[room] = true;
        order.add(room);
        for (int i = doorways.get(room).size() - 1; i >= 0; i--) {
          next.push(doorways.get(room).get(i).to());
        }
      }
    }
  }

  /** The doorways on the way with the fewest of them; none where there is no way. */
  List<Position> doorsBetween(int from, int to) {
    Doorway[] back = new Doorway[rooms.size()];
    int[] queue = new int[rooms.size()];
    boolean[] seen = new boolean[rooms.size()];
    seen[from] = true;
    queue[0] = from;
    int count = 1;
    for (int i = 0; i < count && !seen[to]; i++) {
      for (Doorway doorway : doorways.get(queue[i])) {
        if (!seen[doorway.to()]) {
          seen[doorway.to()] = true;
          back[doorway.to()] = new Doorway(queue[i], doorway.place());
          queue[count++] = doorway.to();
        }
      }
    }
    List<Position> doors = new ArrayList<>();
    for (int room = to; back[room] != null; room = back[room].to()) {
      doors.add(back[room].place());
    }
    Collections.reverse(doors);
    return doors;
  }
}
