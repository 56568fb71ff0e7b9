package dev.fillplane.screed;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Where across the travel rails lie: 0.3 m from the outermost walls, between them evenly, no
 * further apart than the screed is long less 0.2 m to overlap; and 0.3 m from every other wall of 1
 * m or more along the travel (the inner walls of an L) that has none so near.
 */
final class RailLines {

  private static final double FROM_WALL = 0.3;
  private static final double OVERLAP = 0.2;
  private static final double WALL = 1.0;
  private static final double PARALLEL = Math.tan(Math.toRadians(5));
  private static final double ROUNDING = 1e-6;
  private static final int MOST = 200;

  private RailLines() {}

  /** The lines of a room in the frame of the travel, from right to left. */
  static List<Double> of(Geometry room, double screedLength) {
    Envelope box = room.getEnvelopeInternal();
    double fromWall = Math.min(FROM_WALL, box.getHeight() / 4);
    List<Double> lines =
        evenly(box.getMinY() + fromWall, box.getMaxY() - fromWall, step(screedLength));
    for (double extra : besideWalls((Polygon) room)) {
      boolean served = lines.stream().anyMatch(line -> Math.abs(line - extra) < 2 * FROM_WALL / 3);
      boolean within = extra > box.getMinY() + ROUNDING && extra < box.getMaxY() - ROUNDING;
      if (within && !served && lines.size() < MOST) {
        lines.add(extra);
      }
    }
    lines.sort(null);
    return lines;
  }

  private static double step(double screedLength) {
    return Math.max(screedLength - OVERLAP, screedLength / 2);
  }

  private static List<Double> evenly(double from, double to, double step) {
    int gaps = (int) Math.min(MOST, Math.max(1, Math.ceil((to - from) / step - ROUNDING)));
    List<Double> lines = new ArrayList<>();
    for (int i = 0; i <= gaps; i++) {
      lines.add(from + (to - from) * i / gaps);
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
