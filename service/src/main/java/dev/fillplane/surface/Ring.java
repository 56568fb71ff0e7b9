package dev.fillplane.surface;

import org.locationtech.jts.geom.Coordinate;

/**
 * A closed ring in local coordinates, without its last position again. Anticlockwise counts
 * positive, clockwise (an island) negative.
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

  /** Signed area. */
  double area() {
    return area(x, y, x.length);
  }

  /** The same of the first {@code size} positions; counted from the first one to lose no digits. */
  static double area(double[] x, double[] y, int size) {
    double twice = 0;
    for (int i = 1; i < size - 1; i++) {
      twice += (x[i] - x[0]) * (y[i + 1] - y[0]) - (x[i + 1] - x[0]) * (y[i] - y[0]);
    }
    return twice / 2;
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
