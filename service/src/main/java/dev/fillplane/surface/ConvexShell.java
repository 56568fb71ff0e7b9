package dev.fillplane.surface;

import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * A room without islands or inner corners. Whether a part lies in it is told by its corners alone,
 * which saves cutting the part by the room.
 */
final class ConvexShell {

  /** By so much a part may stick out, m: it was cut on a lattice of 10 nm and turned back. */
  private static final double ROUNDING = 2e-8;

  private final Coordinate[] corners;

  private ConvexShell(Coordinate[] corners) {
    this.corners = corners;
  }

  /** The shell of {@code room}; it contains nothing where the room has islands or inner corners. */
  static ConvexShell of(Polygon room) {
    Coordinate[] ring = room.getExteriorRing().getCoordinates();
    boolean plain = room.getNumInteriorRing() == 0;
    return new ConvexShell(plain && isConvex(ring) ? anticlockwise(ring) : new Coordinate[0]);
  }

  private static boolean isConvex(Coordinate[] ring) {
    boolean left = false;
    boolean right = false;
    for (int i = 0; i + 1 < ring.length; i++) {
      Coordinate next = ring[i + 2 < ring.length ? i + 2 : 1];
      int turn = Orientation.index(ring[i], ring[i + 1], next);
      left |= turn == Orientation.LEFT;
      right |= turn == Orientation.RIGHT;
    }
    return left != right;
  }

  private static Coordinate[] anticlockwise(Coordinate[] ring) {
    return Orientation.isCCW(ring) ? ring : reversed(ring);
  }

  private static Coordinate[] reversed(Coordinate[] ring) {
    Coordinate[] back = new Coordinate[ring.length];
    for (int i = 0; i < ring.length; i++) {
      back[i] = ring[ring.length - 1 - i];
    }
    return back;
  }

  /** Whether {@code part} surely lies in the room; false also where that is not told so simply. */
  boolean contains(Polygon part) {
    if (corners.length == 0) {
      return false;
    }
    for (Coordinate place : part.getExteriorRing().getCoordinates()) {
      for (int i = 1; i < corners.length; i++) {
        if (beyond(corners[i - 1], corners[i], place) > ROUNDING) {
          return false;
        }
      }
    }
    return true;
  }

  /** How far a place lies to the right of an edge. */
  private static double beyond(Coordinate from, Coordinate to, Coordinate place) {
    double cross = (to.x - from.x) * (place.y - from.y) - (to.y - from.y) * (place.x - from.x);
    return -cross / from.distance(to);
  }
}
