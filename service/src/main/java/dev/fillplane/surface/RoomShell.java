package dev.fillplane.surface;

import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * The edge of a room. Whether a part lies in the room is mostly told by the corners of both, which
 * saves cutting the part by the room.
 */
final class RoomShell {

  /** By so much a part may stick out, m: it was cut on a lattice of 10 nm and turned back. */
  private static final double ROUNDING = 2e-8;

  private final Coordinate[] shell;
  private final Envelope islands = new Envelope();

  private RoomShell(Polygon room) {
    Coordinate[] ring = room.getExteriorRing().getCoordinates();
    shell = Orientation.isCCW(ring) ? ring : reversed(ring);
    for (int i = 0; i < room.getNumInteriorRing(); i++) {
      islands.expandToInclude(room.getInteriorRingN(i).getEnvelopeInternal());
    }
  }

  static RoomShell of(Polygon room) {
    return new RoomShell(room);
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
    if (islands.intersects(part.getEnvelopeInternal())) {
      return false;
    }
    Coordinate[] ring = part.getExteriorRing().getCoordinates();
    for (int i = 1; i < ring.length; i++) {
      if (!isIn(ring[i]) || (!runsAlong(ring[i - 1], ring[i]) && leaves(ring[i - 1], ring[i]))) {
        return false;
      }
    }
    return true;
  }

  private boolean isIn(Coordinate place) {
    return PointLocation.isInRing(place, shell)
        || Distance.pointToSegmentString(place, shell) <= ROUNDING;
  }

  /** Whether one edge of the part lies on one wall. */
  private boolean runsAlong(Coordinate from, Coordinate to) {
    for (int i = 1; i < shell.length; i++) {
      if (Distance.pointToSegment(from, shell[i - 1], shell[i]) <= ROUNDING
          && Distance.pointToSegment(to, shell[i - 1], shell[i]) <= ROUNDING) {
        return true;
      }
    }
    return false;
  }

  /** Whether an edge of the part may pass through a wall from within, or round its end. */
  private boolean leaves(Coordinate from, Coordinate to) {
    for (int i = 1; i < shell.length; i++) {
      boolean beyond = isOut(shell[i - 1], shell[i], from);
      if (beyond != isOut(shell[i - 1], shell[i], to)
          && !areApart(from, to, shell[i - 1], shell[i])) {
        return true;
      }
    }
    return false;
  }

  /** Whether both ends of a wall lie on one side of an edge. */
  private static boolean areApart(Coordinate from, Coordinate to, Coordinate a, Coordinate b) {
    return (isOut(from, to, a) && isOut(from, to, b)) || (isOut(to, from, a) && isOut(to, from, b));
  }

  /** Whether a place is on the right of a line by more than rounding. */
  private static boolean isOut(Coordinate from, Coordinate to, Coordinate place) {
    double east = to.x - from.x;
    double north = to.y - from.y;
    double left = east * (place.y - from.y) - north * (place.x - from.x);
    return left < -ROUNDING * Math.hypot(east, north);
  }
}
