package dev.fillplane.surface;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;

/**
 * A closed ring in local coordinates, without its last position again. Anticlockwise counts
 * positive, clockwise (an island) negative.
 *
 * <p>Clipping keeps half planes after Sutherland and Hodgman (Comm. ACM 17, 1974). Of a ring that
 * is not convex it may leave edges that run forth and back along the clipping line; they carry no
 * area, so that every signed integral over the ring stays exact.
 */
record Ring(double[] x, double[] y) {

  /** A ring of JTS coordinates (closed), moved by an origin and turned the way that is asked. */
  static Ring of(Coordinate[] closed, double originX, double originY, boolean anticlockwise) {
    int n = closed.length - 1;
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = closed[i].x - originX;
      y[i] = closed[i].y - originY;
    }
    Ring ring = new Ring(x, y);
    return ring.area() > 0 == anticlockwise ? ring : ring.reversed();
  }

  int size() {
    return x.length;
  }

  /** Signed area, counted from the first position to lose no digits. */
  double area() {
    double twice = 0;
    for (int i = 1; i < x.length - 1; i++) {
      twice += (x[i] - x[0]) * (y[i + 1] - y[0]) - (x[i + 1] - x[0]) * (y[i] - y[0]);
    }
    return twice / 2;
  }

  /** What lies where {@code a * x + b * y + c} is not negative. */
  Ring clip(double a, double b, double c) {
    int n = x.length;
    double[] side = new double[n];
    boolean all = true;
    for (int i = 0; i < n; i++) {
      side[i] = a * x[i] + b * y[i] + c;
      all &= side[i] >= 0;
    }
    return all ? this : clip(side);
  }

  /**
   * What lies where a function that is linear on the ring, given at its positions, is not negative.
   */
  Ring clip(double[] side) {
    int n = x.length;
    double[] keptX = new double[2 * n];
    double[] keptY = new double[2 * n];
    int kept = 0;
    for (int i = 0; i < n; i++) {
      int next = i + 1 < n ? i + 1 : 0;
      if (side[i] >= 0) {
        keptX[kept] = x[i];
        keptY[kept++] = y[i];
      }
      if (side[i] >= 0 != side[next] >= 0) {
        double share = side[i] / (side[i] - side[next]);
        keptX[kept] = x[i] + share * (x[next] - x[i]);
        keptY[kept++] = y[i] + share * (y[next] - y[i]);
      }
    }
    return new Ring(Arrays.copyOf(keptX, kept), Arrays.copyOf(keptY, kept));
  }

  private Ring reversed() {
    int n = x.length;
    double[] backX = new double[n];
    double[] backY = new double[n];
    for (int i = 0; i < n; i++) {
      backX[i] = x[n - 1 - i];
      backY[i] = y[n - 1 - i];
    }
    return new Ring(backX, backY);
  }
}
