package dev.fillplane.screed;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Where across the travel rails lie: 0.3 m from the outermost walls, or on the finished edge of an
 * earlier bay that bounds this one there; between them evenly, no further apart than the screed is
 * long less 0.2 m to overlap; and 0.3 m from every other wall of 1 m or more along the travel (the
 * inner walls of an L) that has none so near.
 */
final class RailLines {

  private static final double FROM_WALL = 0.3;
  private static final double OVERLAP = 0.2;
  private static final double WALL = 1.0;
  private static final double AT_EDGE = 0.05;
  private static final double PARALLEL = Math.tan(Math.toRadians(5));
  private static final double ROUNDING = 1e-6;
  private static final int MOST = 200;

  private RailLines() {}

  /**
   * The lines of a bay in the frame of the travel, from right to left.
   *
   * @param edges finished edges of earlier bays, across the travel
   */
  static List<RailLine> of(Geometry bay, double screedLength, List<Double> edges) {
    Envelope box = bay.getEnvelopeInternal();
    double fromWall = Math.min(FROM_WALL, box.getHeight() / 4);
    boolean edgeRight = edges.stream().anyMatch(e -> Math.abs(e - box.getMinY()) <= AT_EDGE);
    boolean edgeLeft = edges.stream().anyMatch(e -> Math.abs(e - box.getMaxY()) <= AT_EDGE);
    double from = box.getMinY() + (edgeRight ? 0 : fromWall);
    double to = box.getMaxY() - (edgeLeft ? 0 : fromWall);
    List<RailLine> lines = evenly(from, to, step(screedLength), edgeRight, edgeLeft);
    for (double extra : besideWalls((Polygon) bay)) {
      boolean served =
          lines.stream().anyMatch(line -> Math.abs(line.across() - extra) < 2 * FROM_WALL / 3);
      boolean within = extra > from - ROUNDING && extra < to + ROUNDING;
      boolean atEdge =
          edges.stream().anyMatch(edge -> Math.abs(edge - extra) < FROM_WALL + AT_EDGE);
      if (within && !served && !atEdge && lines.size() < MOST) {
        lines.add(new RailLine(extra, RailSupport.WALL));
      }
    }
    lines.sort(Comparator.comparingDouble(RailLine::across));
    return lines;
  }

  private static double step(double screedLength) {
    return Math.max(screedLength - OVERLAP, screedLength / 2);
  }

  private static List<RailLine> evenly(
      double from, double to, double step, boolean edgeRight, boolean edgeLeft) {
    int gaps = (int) Math.min(MOST, Math.max(1, Math.ceil((to - from) / step - ROUNDING)));
    List<RailLine> lines = new ArrayList<>();
    for (int i = 0; i <= gaps; i++) {
      RailSupport support = i == 0 || i == gaps ? RailSupport.WALL : RailSupport.FREE;
      boolean edge = (i == 0 && edgeRight) || (i == gaps && edgeLeft);
      lines.add(new RailLine(from + (to - from) * i / gaps, edge ? RailSupport.EDGE : support));
    }
    return lines;
  }

  private static List<Double> besideWalls(Polygon room) {
    Coordinate[] ring = ((Polygon) room.norm()).getExteriorRing().getCoordinates();
    List<Double> lines = new ArrayList<>();
    for (int i = 1; i < ring.length; i++) {
      double along = ring[i].x - ring[i - 1].x;
      double across = ring[i].y - ring[i - 1].y;
      if (Math.abs(along) >= WALL && Math.abs(across) <= PARALLEL * Math.abs(along)) {
        // A normalised ring runs clockwise: the room lies to its right.
        double mean = (ring[i].y + ring[i - 1].y) / 2;
        lines.add(mean - Math.signum(along) * FROM_WALL);
      }
    }
    return lines;
  }
}
