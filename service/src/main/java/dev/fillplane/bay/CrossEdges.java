package dev.fillplane.bay;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * Edges that run square across the travel. Where a part of the floor was cut, both sides have the
 * same such edge to the last digit; so what two pieces share is found without an overlay. Seams
 * along the travel, as at a neck, are not told: they are no front.
 */
final class CrossEdges {

  /** Places along the travel, and from where to where across it. */
  private record Edge(double at, double from, double to) {}

  private CrossEdges() {}

  /**
   * Ranges across the travel, {@code from} and {@code to}, where two pieces that do not overlap
   * touch.
   */
  static List<double[]> shared(Polygon one, Polygon other) {
    List<Edge> edges = of(other);
    List<double[]> ranges = new ArrayList<>();
    for (Edge a : of(one)) {
      for (Edge b : edges) {
        double from = Math.max(a.from, b.from);
        double to = Math.min(a.to, b.to);
        if (a.at == b.at && from < to) {
          ranges.add(new double[] {from, to});
        }
      }
    }
    return ranges;
  }

  private static List<Edge> of(Polygon piece) {
    List<Edge> edges = new ArrayList<>();
    add(piece.getExteriorRing(), edges);
    for (int i = 0; i < piece.getNumInteriorRing(); i++) {
      add(piece.getInteriorRingN(i), edges);
    }
    return edges;
  }

  private static void add(LineString ring, List<Edge> edges) {
    CoordinateSequence corners = ring.getCoordinateSequence();
    for (int i = 1; i < corners.size(); i++) {
      if (corners.getX(i - 1) == corners.getX(i)) {
        double a = corners.getY(i - 1);
        double b = corners.getY(i);
        edges.add(new Edge(corners.getX(i), Math.min(a, b), Math.max(a, b)));
      }
    }
  }
}
