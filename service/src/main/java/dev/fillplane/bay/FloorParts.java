package dev.fillplane.bay;

import dev.fillplane.room.Doorway;
import dev.fillplane.room.Feature;
import dev.fillplane.room.Opening;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * All parts of the floor and the ways between them: doorways from room to room, joints from part to
 * part of one room.
 */
final class FloorParts {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private final List<Room> rooms;
  private final List<FloorPart> parts = new ArrayList<>();
  private final List<List<Passage>> passages = new ArrayList<>();
  private final List<List<JointLine>> joints = new ArrayList<>();
  private final List<List<Integer>> byRoom = new ArrayList<>();

  private FloorParts(List<Room> rooms, List<Feature> features) {
    this.rooms = rooms;
    for (int room = 0; room < rooms.size(); room++) {
      RoomParts cut = RoomParts.of(rooms.get(room).outline().polygon(), features);
      byRoom.add(new ArrayList<>());
      for (Polygon polygon : cut.parts()) {
        byRoom.get(room).add(parts.size());
        parts.add(new FloorPart(room, polygon));
        passages.add(new ArrayList<>());
      }
      joints.add(cut.joints());
    }
  }

  static FloorParts of(List<Room> rooms, List<Feature> features) {
    FloorParts floor = new FloorParts(rooms, features);
    floor.joinByDoorways();
    floor.joinAcrossJoints();
    return floor;
  }

  private void joinByDoorways() {
    List<List<Doorway>> doorways = Doorway.of(rooms);
    for (int room = 0; room < rooms.size(); room++) {
      for (Doorway doorway : doorways.get(room)) {
        int from = nearest(room, doorway.place());
        int to = nearest(doorway.to(), doorway.place());
        if (from >= 0 && to >= 0) {
          passages.get(from).add(new Passage(to, List.of(doorway.place())));
        }
      }
    }
  }

  private void joinAcrossJoints() {
    for (int room = 0; room < rooms.size(); room++) {
      for (JointLine joint : joints.get(room)) {
        for (int left : byRoom.get(room)) {
          byRoom.get(room).stream()
              .filter(right -> right != left)
              .forEach(right -> join(left, right, joint));
        }
      }
    }
  }

  private void join(int left, int right, JointLine joint) {
    List<Position> places =
        JointSides.between(joint, parts.get(left).polygon(), parts.get(right).polygon());
    if (!places.isEmpty()) {
      passages.get(left).add(new Passage(right, places));
      passages.get(right).add(new Passage(left, places));
    }
  }

  /** The part of a room that is nearest to a place; -1 where nothing is left of the room. */
  int nearest(int room, Position place) {
    List<Integer> own = byRoom.get(room);
    if (own.size() < 2) {
      return own.isEmpty() ? -1 : own.get(0);
    }
    Point point = GEOMETRY.createPoint(JointLine.coordinate(place));
    return own.stream()
        .min(Comparator.comparingDouble(part -> parts.get(part).polygon().distance(point)))
        .orElseThrow();
  }

  int size() {
    return parts.size();
  }

  FloorPart part(int part) {
    return parts.get(part);
  }

  Room room(int part) {
    return rooms.get(parts.get(part).room());
  }

  List<Passage> passages(int part) {
    return passages.get(part);
  }

  /** The moving joints of a room. */
  List<JointLine> joints(int room) {
    return joints.get(room);
  }

  /** The openings that lead out of a part. */
  List<Opening> openings(int part) {
    int room = parts.get(part).room();
    return rooms.get(room).openings().stream()
        .filter(opening -> nearest(room, opening.middle()) == part)
        .toList();
  }

  /** How many parts a room has. */
  int count(int room) {
    return byRoom.get(room).size();
  }
}
