package dev.fillplane.bay;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * A corner that sticks out into the floor, of a wall or of an island.
 *
 * @param before the other end of one of its walls
 * @param at the corner
 * @param after the other end of the other wall
 */
record InnerCorner(Coordinate before, Coordinate at, Coordinate after) {

  private static final double STRAIGHT = 1e-3;
  private static final int MOST = 16;

  /** The inner corners of a part of the floor, at most 16. */
  static List<InnerCorner> of(Polygon part) {
    List<InnerCorner> corners = new ArrayList<>();
    Polygon floor = (Polygon) DouglasPeuckerSimplifier.simplify(part, STRAIGHT).norm();
    add(floor.getExteriorRing(), corners);
    for (int i = 0; i < floor.getNumInteriorRing(); i++) {
      add(floor.getInteriorRingN(i), corners);
    }
    return corners.subList(0, Math.min(MOST, corners.size()));
  }

  private static void add(LineString closed, List<InnerCorner> corners) {
    Coordinate[] ring = closed.getCoordinates();
    int sides = ring.length - 1;
    for (int i = 0; i < sides; i++) {
      InnerCorner corner = new InnerCorner(ring[(i + sides - 1) % sides], ring[i], ring[i + 1]);
      if (corner.sticksOut()) {
        corners.add(corner);
      }
    }
  }

  /** In a normalised polygon the floor lies to the right of every ring. */
  private boolean sticksOut() {
    return Orientation.index(before, at, after) == Orientation.COUNTERCLOCKWISE;
  }
}
