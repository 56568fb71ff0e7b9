package dev.fillplane.flatness;

import dev.fillplane.room.Position;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * Turned axes: u runs along the straightedge, v across it. They turn with the longest wall of the
 * room, so that a plan turned as a whole is walked over at the same places.
 */
record Frame(double cosine, double sine) {

  /** Walls that differ by less count as equally long; the first one then gives the direction. */
  private static final double SAME_LENGTH = 1e-9;

  /** Axes turned by {@code turn} radians from the longest wall of {@code room}. */
  static Frame of(Polygon room, double turn) {
    Coordinate wall = longestWall(room.getExteriorRing());
    double length = Math.hypot(wall.x, wall.y);
    double cosine = wall.x / length;
    double sine = wall.y / length;
    return new Frame(
        cosine * Math.cos(turn) - sine * Math.sin(turn),
        sine * Math.cos(turn) + cosine * Math.sin(turn));
  }

  double u(double x, double y) {
    return cosine * x + sine * y;
  }

  double v(double x, double y) {
    return cosine * y - sine * x;
  }

  double x(double u, double v) {
    return cosine * u - sine * v;
  }

  double y(double u, double v) {
    return sine * u + cosine * v;
  }

  Position position(double u, double v) {
    return new Position(x(u, v), y(u, v));
  }

  private static Coordinate longestWall(LineString ring) {
    Coordinate longest = new Coordinate(1, 0);
    double length = 0;
    for (int i = 1; i < ring.getNumPoints(); i++) {
      Coordinate from = ring.getCoordinateN(i - 1);
      Coordinate to = ring.getCoordinateN(i);
      if (from.distance(to) > length * (1 + SAME_LENGTH)) {
        length = from.distance(to);
        longest = new Coordinate(to.x - from.x, to.y - from.y);
      }
    }
    return longest;
  }
}
