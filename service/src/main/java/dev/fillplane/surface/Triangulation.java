package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;
import java.util.ArrayList;
import java.util.List;
import org.tinfour.common.IIncrementalTin;
import org.tinfour.common.IIncrementalTinNavigator;
import org.tinfour.common.IQuadEdge;
import org.tinfour.common.Vertex;
import org.tinfour.semivirtual.SemiVirtualIncrementalTin;

/**
 * The Delaunay triangulation of some places. Never changed once built, so threads may share it. Its
 * edges stand in arrays: for a million places an object for each would cost as much time in
 * collecting garbage as in building.
 */
final class Triangulation {

  private final IIncrementalTin tin;

  /** Of the places {@code which}, or of all where that is null; best in Hilbert order. */
  private Triangulation(double[] x, double[] y, int[] which) {
    int count = which == null ? x.length : which.length;
    List<Vertex> vertices = new ArrayList<>(count);
    double east = Double.NEGATIVE_INFINITY;
    double west = Double.POSITIVE_INFINITY;
    double north = Double.NEGATIVE_INFINITY;
    double south = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      int place = which == null ? i : which[i];
      vertices.add(new Vertex(x[place], y[place], 0, place));
      east = Math.max(east, x[place]);
      west = Math.min(west, x[place]);
      north = Math.max(north, y[place]);
      south = Math.min(south, y[place]);
    }
    double area = Math.max((east - west) * (north - south), Double.MIN_NORMAL);
    tin = new SemiVirtualIncrementalTin(Math.sqrt(area / count));
    tin.add(InRounds.of(vertices), new Growth());
    Stopped.ifInterrupted();
  }

  static Triangulation of(DensePlaces places) {
    return new Triangulation(places.x(), places.y(), null);
  }

  /** Of a few places by number; {@link #exists} tells whether they span a triangle. */
  static Triangulation of(DensePlaces places, int[] which) {
    return new Triangulation(places.x(), places.y(), which);
  }

  boolean exists() {
    return tin.isBootstrapped();
  }

  IIncrementalTin tin() {
    return tin;
  }

  /**
   * The places that share an edge with one; empty for a place on the hull or merged with another.
   */
  static int[] neighbours(IIncrementalTinNavigator navigator, double x, double y, int place) {
    IQuadEdge edge = navigator.getNeighborEdge(x, y);
    for (int i = 0; i < 3 && !starts(edge, place); i++) {
      edge = edge.getForward();
    }
    if (!starts(edge, place)) {
      return new int[0];
    }
    List<Integer> found = new ArrayList<>();
    for (IQuadEdge spoke : edge.pinwheel()) {
      if (spoke.getB() == null) {
        return new int[0];
      }
      found.add(spoke.getB().getIndex());
    }
    return found.stream().mapToInt(Integer::intValue).toArray();
  }

  private static boolean starts(IQuadEdge edge, int place) {
    return edge.getA() != null && edge.getA().getIndex() == place;
  }
}
