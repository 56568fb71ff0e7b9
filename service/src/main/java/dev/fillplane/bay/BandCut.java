package dev.fillplane.bay;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Cuts bands across the travel out of a part of the floor. Where the lines of a band cross the edge
 * of the part twice at most, away from its corners, and no island reaches into the band, one piece
 * lies in it, whose corners follow from the edge alone. A convex one is told at once; all others
 * are left to the overlay, which gives the same corners in the same order, but slower.
 */
final class BandCut {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** Corners nearer to a line, or to each other, are left to the overlay. */
  private static final double NEAR = 1e-6;

  private final Polygon part;
  private final Envelope box;
  private final Coordinate[] shell;
  private final boolean anticlockwise;

  /** Of a part in the frame of the travel. */
  BandCut(Polygon part) {
    this.part = part;
    box = part.getEnvelopeInternal();
    shell = part.getExteriorRing().getCoordinates();
    anticlockwise = Orientation.isCCW(shell);
  }

  /** The pieces between two lines that lie on the lattice of the overlay. */
  List<Polygon> between(double from, double to) {
    if (isCrossedTwice(from) && isCrossedTwice(to) && !isNearIsland(from, to)) {
      List<Coordinate> piece = piece(from, to);
      if (isPlain(piece, from, to)) {
        return List.of(polygon(piece, from, to));
      }
    }
    Envelope band = new Envelope(from, to, box.getMinY() - 1, box.getMaxY() + 1);
    Geometry rectangle = GEOMETRY.toGeometry(band);
    return Overlay.common(part, rectangle);
  }

  /** Twice or, beyond both ends of the part, not at all. */
  private boolean isCrossedTwice(double line) {
    int crossings = 0;
    for (int i = 1; i < shell.length; i++) {
      if (Math.abs(shell[i].x - line) < NEAR) {
        return false;
      }
      crossings += shell[i - 1].x < line != shell[i].x < line ? 1 : 0;
    }
    return crossings <= 2;
  }

  private boolean isNearIsland(double from, double to) {
    for (int i = 0; i < part.getNumInteriorRing(); i++) {
      Envelope island = part.getInteriorRingN(i).getEnvelopeInternal();
      if (island.getMaxX() > from - NEAR && island.getMinX() < to + NEAR) {
        return true;
      }
    }
    return false;
  }

  /** Corners in the band, and where the edge crosses its lines, along the edge. */
  private List<Coordinate> piece(double from, double to) {
    List<Coordinate> piece = new ArrayList<>();
    for (int i = 1; i < shell.length; i++) {
      Coordinate a = shell[i - 1];
      Coordinate b = shell[i];
      if (a.x > from && a.x < to) {
        piece.add(new Coordinate(precise(a.x), precise(a.y)));
      }
      boolean onward = a.x < b.x;
      addCrossing(a, b, onward ? from : to, piece);
      addCrossing(a, b, onward ? to : from, piece);
    }
    return piece;
  }

  private static void addCrossing(Coordinate a, Coordinate b, double line, List<Coordinate> piece) {
    if (a.x < line != b.x < line) {
      double share = (line - a.x) / (b.x - a.x);
      piece.add(new Coordinate(line, precise(a.y + share * (b.y - a.y))));
    }
  }

  private static double precise(double value) {
    return Overlay.LATTICE.makePrecise(value);
  }

  /** Whether a piece is convex, has no short side, and a line of the band bounds it. */
  private boolean isPlain(List<Coordinate> piece, double from, double to) {
    boolean cut = false;
    for (int i = 0; i < piece.size(); i++) {
      Coordinate corner = piece.get(i);
      Coordinate next = piece.get((i + 1) % piece.size());
      Coordinate after = piece.get((i + 2) % piece.size());
      int turn = Orientation.index(corner, next, after);
      if (turn == (anticlockwise ? Orientation.RIGHT : Orientation.LEFT)
          || corner.distance(next) < NEAR) {
        return false;
      }
      cut |= isOnLine(corner, from, to);
    }
    return cut;
  }

  private static boolean isOnLine(Coordinate corner, double from, double to) {
    return corner.x == from || corner.x == to;
  }

  /**
   * Clockwise, from the second corner of the first stretch of edge: the overlay begins there, and
   * the order decides about the last digits of what is summed along a ring.
   */
  private Polygon polygon(List<Coordinate> piece, double from, double to) {
    int end = 1;
    while (!isOnLine(piece.get(end), from, to)) {
      end++;
    }
    int n = piece.size();
    Coordinate[] ring = new Coordinate[n + 1];
    for (int i = 0; i <= n; i++) {
      int at = anticlockwise ? end - 1 - i : 1 + i;
      ring[i] = piece.get(Math.floorMod(at, n)).copy();
    }
    return GEOMETRY.createPolygon(ring);
  }
}
