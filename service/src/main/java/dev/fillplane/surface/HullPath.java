package dev.fillplane.surface;

import java.util.List;
import org.tinfour.common.IQuadEdge;
import org.tinfour.common.Vertex;

/**
 * Finds what the edges of a hull say at their place nearest to a position outside. It remembers the
 * edge it found last and walks on from there: of the edges that are seen from a position, the
 * distances fall towards the nearest and rise beyond. Make one for each thread.
 */
final class HullPath {

  private final double[] x;
  private final double[] y;
  private final double[] values;
  private int last;

  /**
   * Of a triangulation whose places have these values.
   *
   * @param perimeter its edges, one after the other, the inside to their left
   */
  HullPath(List<IQuadEdge> perimeter, double[] values) {
    x = new double[perimeter.size() + 1];
    y = new double[x.length];
    this.values = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      Vertex corner = perimeter.get(i % perimeter.size()).getA();
      x[i] = corner.getX();
      y[i] = corner.getY();
      this.values[i] = values[corner.getIndex()];
    }
  }

  /** The value at the nearest place of the hull. */
  double at(double atX, double atY) {
    if (sees(last, atX, atY)) {
      walk(atX, atY);
    } else {
      search(atX, atY);
    }
    double part = part(last, atX, atY);
    return values[last] + part * (values[last + 1] - values[last]);
  }

  private void walk(double atX, double atY) {
    double least = square(last, atX, atY);
    for (int step : new int[] {1, edges() - 1}) {
      int next = (last + step) % edges();
      double square = square(next, atX, atY);
      while (square < least) {
        last = next;
        least = square;
        next = (last + step) % edges();
        square = square(next, atX, atY);
      }
    }
  }

  private void search(double atX, double atY) {
    double least = Double.POSITIVE_INFINITY;
    for (int edge = 0; edge < edges(); edge++) {
      double square = square(edge, atX, atY);
      if (square < least) {
        least = square;
        last = edge;
      }
    }
  }

  private int edges() {
    return x.length - 1;
  }

  private boolean sees(int edge, double atX, double atY) {
    double alongX = x[edge + 1] - x[edge];
    double alongY = y[edge + 1] - y[edge];
    return alongX * (atY - y[edge]) - alongY * (atX - x[edge]) < 0;
  }

  /** How far along an edge its nearest place is, from 0 to 1. */
  private double part(int edge, double atX, double atY) {
    double alongX = x[edge + 1] - x[edge];
    double alongY = y[edge + 1] - y[edge];
    double length = alongX * alongX + alongY * alongY;
    double along = alongX * (atX - x[edge]) + alongY * (atY - y[edge]);
    return length > 0 ? Math.max(0, Math.min(1, along / length)) : 0;
  }

  private double square(int edge, double atX, double atY) {
    double part = part(edge, atX, atY);
    double dx = atX - x[edge] - part * (x[edge + 1] - x[edge]);
    double dy = atY - y[edge] - part * (y[edge + 1] - y[edge]);
    return dx * dx + dy * dy;
  }
}
