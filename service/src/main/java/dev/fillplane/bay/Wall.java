package dev.fillplane.bay;

import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** A straight part of the outline of a room; one that is told in several pieces counts as one. */
record Wall(Coordinate from, Coordinate to) {

  private static final double STRAIGHT = 1e-3;
  private static final int MOST = 24;

  /** The longest first; only those that are at least half as long, and not more than 24. */
  static List<Wall> longOnes(Polygon room) {
    List<Wall> walls = all(room);
    double least = walls.get(0).length() / 2;
    return walls.stream().filter(wall -> wall.length() >= least).limit(MOST).toList();
  }

  private static List<Wall> all(Polygon room) {
    Geometry ring = DouglasPeuckerSimplifier.simplify(room.getExteriorRing(), STRAIGHT);
    Coordinate[] corners = ring.getCoordinates();
    List<Wall> walls = new ArrayList<>();
    for (int i = 1; i < corners.length; i++) {
      walls.add(new Wall(corners[i - 1], corners[i]));
    }
    walls.sort(Comparator.comparingDouble(Wall::length).reversed());
    return walls;
  }

  double length() {
    return from.distance(to);
  }

  Position middle() {
    return new Position((from.x + to.x) / 2, (from.y + to.y) / 2);
  }
}
