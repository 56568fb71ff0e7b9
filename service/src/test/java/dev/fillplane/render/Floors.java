package dev.fillplane.render;

import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Invented rooms. */
final class Floors {

  private Floors() {}

  static List<Room> rectangleWithIsland() {
    return List.of(
        room(
            "hall",
            List.of(exit("yard", 2, 0, 2.9, 0), doorway("door", 6, 1, 6, 1.9)),
            rectangle(0, 0, 6, 4),
            rectangle(2.5, 1.8, 3.1, 2.4)));
  }

  static List<Room> ell() {
    return List.of(
        room(
            "ell",
            List.of(exit("out", 0, 6, 0, 6.9), threshold("step", 7, 0.5, 7, 1.5)),
            ring(0, 0, 7, 0, 7, 2.5, 3, 2.5, 3, 8, 0, 8),
            rectangle(1.2, 1, 1.6, 1.4)));
  }

  static List<Room> passage() {
    return List.of(
        room("long passage", List.of(exit("end", 20, 0.1, 20, 1.1)), rectangle(0, 0, 20, 1.2)));
  }

  static List<Room> upright() {
    return List.of(
        room("lift lobby", List.of(exit("end", 0.1, 20, 1.1, 20)), rectangle(0, 0, 1.2, 20)));
  }

  static List<Room> closet() {
    return List.of(room("closet", List.of(exit("door", 0.1, 0, 0.8, 0)), rectangle(0, 0, 1, 1)));
  }

  static List<Room> twoRoomsAndPassage() {
    return List.of(
        room("workroom", List.of(doorway("w", 3.8, 4.5, 4.6, 4.5)), rectangle(0, 0, 6, 4.5)),
        room("store", List.of(doorway("s", 6.8, 4.5, 7.6, 4.5)), rectangle(6, 0.8, 9.9, 4.5)),
        room("passage", List.of(exit("way out", 0, 4.9, 0, 5.7)), rectangle(0, 4.5, 9.9, 6)));
  }

  /** Six by five rooms of 4 m; each leads to the one south of it, the last row out. */
  static List<Room> thirty() {
    List<Room> rooms = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      double x = i % 6 * 4.2;
      double y = i / 6 * 4;
      Opening out =
          i < 6
              ? exit("out", x + 1, y, x + 1.9, y)
              : opening(
                  "door",
                  x + 1,
                  y,
                  x + 1.9,
                  y,
                  OpeningKind.DOORWAY,
                  Optional.of("room " + (i - 5)));
      rooms.add(room("room " + (i + 1), List.of(out), rectangle(x, y, x + 4, y + 4)));
    }
    return rooms;
  }

  static Room room(String id, List<Opening> openings, List<Position> ring) {
    return room(id, openings, ring, List.of());
  }

  private static Room room(
      String id, List<Opening> openings, List<Position> ring, List<Position> island) {
    Outline outline = new Outline(island.isEmpty() ? List.of(ring) : List.of(ring, island));
    return new Room(id, outline, Optional.empty(), null, OptionalInt.empty(), openings);
  }

  static List<Position> rectangle(double west, double south, double east, double north) {
    return ring(west, south, east, south, east, north, west, north);
  }

  private static List<Position> ring(double... xy) {
    List<Position> ring = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      ring.add(new Position(xy[i], xy[i + 1]));
    }
    ring.add(ring.get(0));
    return ring;
  }

  static Opening exit(String id, double x1, double y1, double x2, double y2) {
    return opening(id, x1, y1, x2, y2, OpeningKind.EXIT, Optional.empty());
  }

  private static Opening doorway(String id, double x1, double y1, double x2, double y2) {
    return opening(id, x1, y1, x2, y2, OpeningKind.DOORWAY, Optional.of("passage"));
  }

  private static Opening threshold(String id, double x1, double y1, double x2, double y2) {
    return opening(id, x1, y1, x2, y2, OpeningKind.THRESHOLD, Optional.empty());
  }

  private static Opening opening(
      String id,
      double x1,
      double y1,
      double x2,
      double y2,
      OpeningKind kind,
      Optional<String> into) {
    return new Opening(id, new Position(x1, y1), new Position(x2, y2), kind, into);
  }
}
