package dev.fillplane.bay;

import dev.fillplane.room.Doorway;
import dev.fillplane.room.Feature;
import dev.fillplane.room.Opening;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

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

  private FloorParts(List<Room> rooms, List<Feature> features) {
    this.rooms = rooms;
    for (int room = 0; room < rooms.size(); room++) {
      RoomParts cut = RoomParts.of(rooms.get(room).outline().polygon(), features);
      for (var polygon : cut.parts()) {
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
        for (int left = 0; left < parts.size(); left++) {
          for (int right = 0; right < parts.size(); right++) {
            if (left != right && of(left, room) && of(right, room)) {
              join(left, right, joint);
            }
          }
        }
      }
    }
  }

  private boolean of(int part, int room) {
    return parts.get(part).room() == room;
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
    Point point = GEOMETRY.createPoint(JointLine.coordinate(place));
    int nearest = -1;
    double least = Double.POSITIVE_INFINITY;
    int only = onlyPart(room);
    if (only >= 0) {
      return only;
    }
    for (int i = 0; i < parts.size(); i++) {
      double distance = of(i, room) ? parts.get(i).polygon().distance(point) : least;
      if (distance < least) {
        least = distance;
        nearest = i;
      }
    }
    return nearest;
  }

  private int onlyPart(int room) {
    int only = -1;
    for (int i = 0; i < parts.size(); i++) {
      if (of(i, room)) {
        if (only >= 0) {
          return -1;
        }
        only = i;
      }
    }
    return only;
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
    return (int) parts.stream().filter(part -> part.room() == room).count();
  }
}
