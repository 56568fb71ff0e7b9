package dev.fillplane.bay;

import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Rooms made by chance from rectangles: L, T, U and worse, with columns and one to three exits. */
final class SeededRooms {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private final Random random;

  SeededRooms(long seed) {
    random = new Random(seed);
  }

  Room next() {
    while (true) {
      Geometry floor = rectangle(4 + 6 * random.nextDouble(), 3 + 4 * random.nextDouble());
      for (int cuts = random.nextInt(4); cuts > 0; cuts--) {
        floor = floor.difference(somewhere(floor, 0.6 + 3 * random.nextDouble()));
      }
      for (int columns = random.nextInt(3); columns > 0; columns--) {
        floor = floor.difference(somewhere(floor, 0.3 + 0.4 * random.nextDouble()));
      }
      if (floor instanceof Polygon room && isWalkable(room) && room.getArea() > 4) {
        return new Room(
            "room", Outline.of(room), Optional.empty(), null, OptionalInt.empty(), exits(room));
      }
    }
  }

  /** Nowhere does a passage of less than 60 cm lead to more than a nook. */
  private static boolean isWalkable(Polygon room) {
    return DoubleStream.of(0.05, 0.1, 0.15, 0.2, 0.3)
        .allMatch(half -> room.buffer(-half) instanceof Polygon);
  }

  private Geometry somewhere(Geometry floor, double size) {
    Envelope box = floor.getEnvelopeInternal();
    double x = box.getMinX() + random.nextDouble() * box.getWidth();
    double y = box.getMinY() + random.nextDouble() * box.getHeight();
    double other = size * (0.5 + random.nextDouble());
    return GEOMETRY.toGeometry(
        new Envelope(x - size / 2, x + size / 2, y - other / 2, y + other / 2));
  }

  private static Geometry rectangle(double width, double depth) {
    return GEOMETRY.toGeometry(new Envelope(0, width, 0, depth));
  }

  private List<Opening> exits(Polygon room) {
    Coordinate[] ring = room.getExteriorRing().getCoordinates();
    List<Opening> exits = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    Geometry clear = room.buffer(-0.3);
    for (int tries = 0; exits.isEmpty() || (tries < 9 && exits.size() < count); tries++) {
      int i = random.nextInt(ring.length - 1);
      double length = ring[i].distance(ring[i + 1]);
      if (length >= 0.9) {
        double from = random.nextDouble() * (length - 0.9);
        Position middle = on(ring[i], ring[i + 1], (from + 0.45) / length);
        Point door = GEOMETRY.createPoint(new Coordinate(middle.x(), middle.y()));
        if (clear.distance(door) > 0.31) {
          continue;
        }
        exits.add(
            new Opening(
                "exit " + exits.size(),
                on(ring[i], ring[i + 1], from / length),
                on(ring[i], ring[i + 1], (from + 0.9) / length),
                OpeningKind.EXIT,
                Optional.empty()));
      }
    }
    return exits;
  }

  private static Position on(Coordinate a, Coordinate b, double share) {
    return new Position(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y));
  }

  Random random() {
    return random;
  }
}
