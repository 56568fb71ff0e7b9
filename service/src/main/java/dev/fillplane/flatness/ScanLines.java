package dev.fillplane.flatness;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * A room cut by parallel lines of constant v into runs between its walls and holes. Lines lie
 * symmetrically about the middle of the room, so that no end is preferred.
 */
final class ScanLines {

  /**
   * Everything keeps this far from walls: a line along a wall, or a sample on it, would be in or
   * out by the rounding of the last digit.
   */
  static final double CLEARANCE = 1e-3;

  /** A length that misses a whole number of steps by less than this part of a step has them all. */
  private static final double WHOLE = 1e-6;

  private final double[][] edges;
  private final double low;
  private final double high;
  private final double start;
  private final double end;

  private ScanLines(double[][] edges) {
    this.edges = edges;
    this.low = Arrays.stream(edges).mapToDouble(e -> e[1]).min().orElse(0);
    this.high = Arrays.stream(edges).mapToDouble(e -> e[1]).max().orElse(0);
    this.start = Arrays.stream(edges).mapToDouble(e -> e[0]).min().orElse(0);
    this.end = Arrays.stream(edges).mapToDouble(e -> e[0]).max().orElse(0);
  }

  static ScanLines of(Polygon room, Frame frame) {
    double[][] edges = new double[room.getNumPoints() - 1 - room.getNumInteriorRing()][];
    int count = addEdges(room.getExteriorRing(), frame, edges, 0);
    for (int hole = 0; hole < room.getNumInteriorRing(); hole++) {
      count = addEdges(room.getInteriorRingN(hole), frame, edges, count);
    }
    return new ScanLines(edges);
  }

  private static int addEdges(LineString ring, Frame frame, double[][] edges, int first) {
    int count = first;
    for (int i = 1; i < ring.getNumPoints(); i++) {
      Coordinate a = ring.getCoordinateN(i - 1);
      Coordinate b = ring.getCoordinateN(i);
      edges[count++] =
          new double[] {frame.u(a.x, a.y), frame.v(a.x, a.y), frame.u(b.x, b.y), frame.v(b.x, b.y)};
    }
    return count;
  }

  /** The v of every line, {@code spacing} apart, the outer ones up to half of it from the walls. */
  double[] lines(double spacing) {
    return centred(low + CLEARANCE, high - CLEARANCE, spacing);
  }

  /** The u of columns {@code spacing} apart that make a lattice of the lines. */
  double[] columns(double spacing) {
    return centred(start + CLEARANCE, end - CLEARANCE, spacing);
  }

  /** Steps of {@code step} that fit between {@code from} and {@code to}, placed in the middle. */
  static double[] centred(double from, double to, double step) {
    int count = (int) Math.floor((to - from) / step + WHOLE) + 1;
    double first = (from + to) / 2 - step * (count - 1) / 2;
    double[] places = new double[Math.max(count, 0)];
    Arrays.setAll(places, i -> first + i * step);
    return places;
  }

  /** Pairs {@code from, to} in u of the parts of the line that lie in the room, in order. */
  double[] runs(double v) {
    double[] left = crossings(v - CLEARANCE);
    double[] right = crossings(v + CLEARANCE);
    double[] runs = new double[left.length + right.length];
    int count = 0;
    int i = 0;
    int j = 0;
    while (i + 1 < left.length && j + 1 < right.length) {
      double from = Math.max(left[i], right[j]) + CLEARANCE;
      double to = Math.min(left[i + 1], right[j + 1]) - CLEARANCE;
      if (to > from) {
        runs[count++] = from;
        runs[count++] = to;
      }
      if (left[i + 1] < right[j + 1]) {
        i += 2;
      } else {
        j += 2;
      }
    }
    return Arrays.copyOf(runs, count);
  }

  private double[] crossings(double v) {
    double[] crossings = new double[edges.length];
    int count = 0;
    for (double[] edge : edges) {
      if (edge[1] <= v != edge[3] <= v) {
        crossings[count++] = edge[0] + (v - edge[1]) / (edge[3] - edge[1]) * (edge[2] - edge[0]);
      }
    }
    Arrays.sort(crossings, 0, count);
    return Arrays.copyOf(crossings, count);
  }
}
