package dev.fillplane.target;

import dev.fillplane.room.Doorway;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/** Rooms that share a plane. */
final class RoomGroups {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private RoomGroups() {}

  /** The rooms' numbers, group by group, in the order of the rooms. */
  static List<List<Integer>> of(Sharing sharing, List<Room> rooms) {
    List<Integer> all = IntStream.range(0, rooms.size()).boxed().toList();
    return switch (sharing) {
      case ONE -> List.of(all);
      case EACH -> all.stream().map(List::of).toList();
      case JOINED -> joined(Doorway.of(rooms));
    };
  }

  private static List<List<Integer>> joined(List<List<Doorway>> doorways) {
    List<List<Integer>> groups = new ArrayList<>();
    boolean[] reached = new boolean[doorways.size()];
    for (int room = 0; room < reached.length; room++) {
      if (!reached[room]) {
        groups.add(reachable(room, doorways, reached));
      }
    }
    return groups;
  }

  private static List<Integer> reachable(
      int from, List<List<Doorway>> doorways, boolean[] reached) {
    List<Integer> group = new ArrayList<>(List.of(from));
    reached[from] = true;
    for (int i = 0; i < group.size(); i++) {
      for (Doorway doorway : doorways.get(group.get(i))) {
        if (!reached[doorway.to()]) {
          reached[doorway.to()] = true;
          group.add(doorway.to());
        }
      }
    }
    return group.stream().sorted().toList();
  }

  /** The room that a position lies in or is nearest to; the first of several. */
  static int nearest(Position position, List<Room> rooms) {
    int nearest = 0;
    for (int room = 1; room < rooms.size(); room++) {
      if (distance(position, rooms.get(room)) < distance(position, rooms.get(nearest))) {
        nearest = room;
      }
    }
    return nearest;
  }

  /** How far a position is from a room; 0 inside. */
  static double distance(Position position, Room room) {
    Point point = FACTORY.createPoint(new Coordinate(position.x(), position.y()));
    return room.outline().polygon().distance(point);
  }
}
