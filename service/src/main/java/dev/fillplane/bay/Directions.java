package dev.fillplane.bay;

import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * The directions in which a bay may be poured: along and across its longest wall and across every
 * other wall at least half as long, each both ways; those within 1 degree of an earlier one are
 * left out. A wall told in several pieces counts as one.
 */
final class Directions {

  private static final double SAME = Math.cos(Math.toRadians(1));
  private static final double STRAIGHT = 1e-3;
  private static final int MOST_WALLS = 24;

  private record Wall(Coordinate from, Coordinate to) {

    double length() {
      return from.distance(to);
    }
  }

  private final Position origin;
  private final List<Travel> all = new ArrayList<>();

  private Directions(Position origin) {
    this.origin = origin;
  }

  /** The directions for a room; those of its longest wall first. */
  static List<Travel> of(Polygon room) {
    List<Wall> walls = walls(room);
    Wall longest = walls.get(0);
    Directions directions =
        new Directions(Travel.position(room.getExteriorRing().getCoordinateN(0)));
    directions.addBoth(longest.to().x - longest.from().x, longest.to().y - longest.from().y);
    walls.stream()
        .filter(wall -> wall.length() >= longest.length() / 2)
        .limit(MOST_WALLS)
        .forEach(w -> directions.addBoth(w.from().y - w.to().y, w.to().x - w.from().x));
    return directions.all;
  }

  private static List<Wall> walls(Polygon room) {
    Geometry ring = DouglasPeuckerSimplifier.simplify(room.getExteriorRing(), STRAIGHT);
    Coordinate[] corners = ring.getCoordinates();
    List<Wall> walls = new ArrayList<>();
    for (int i = 1; i < corners.length; i++) {
      walls.add(new Wall(corners[i - 1], corners[i]));
    }
    walls.sort(Comparator.comparingDouble(Wall::length).reversed());
    return walls;
  }

  private void addBoth(double dx, double dy) {
    add(Travel.toward(origin, dx, dy));
    add(Travel.toward(origin, -dx, -dy));
  }

  private void add(Travel travel) {
    boolean isNew = all.stream().noneMatch(t -> t.x() * travel.x() + t.y() * travel.y() >= SAME);
    if (isNew) {
      all.add(travel);
    }
  }
}
