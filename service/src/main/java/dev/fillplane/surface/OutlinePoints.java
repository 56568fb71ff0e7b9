package dev.fillplane.surface;

import java.util.Arrays;

/**
 * The points of a ring at which the piecewise-linear floor may have a highest or lowest value along
 * it: its own positions, and where it crosses an edge of a triangle. All those edges lie on four
 * families of lines: rows, columns and the two diagonals.
 */
final class OutlinePoints {

  private final double cell;
  private double[] x = new double[256];
  private double[] y = new double[256];
  private int count;

  OutlinePoints(double cell) {
    this.cell = cell;
  }

  void add(Ring ring) {
    for (int i = 0, n = ring.size(); i < n; i++) {
      int j = (i + 1) % n;
      double x1 = ring.x()[i];
      double y1 = ring.y()[i];
      double east = ring.x()[j] - x1;
      double north = ring.y()[j] - y1;
      add(x1, y1);
      cross(x1, x1, y1, east, north, east);
      cross(y1, x1, y1, east, north, north);
      cross(x1 - y1, x1, y1, east, north, east - north);
      cross(x1 + y1, x1, y1, east, north, east + north);
    }
  }

  /** Crossings with the lines on which a coordinate is a multiple of the cell. */
  private void cross(double start, double x1, double y1, double east, double north, double change) {
    double from = Math.min(start, start + change);
    double to = Math.max(start, start + change);
    for (long k = (long) Math.ceil(from / cell); k * cell <= to && to > from; k++) {
      double share = Math.max(0, Math.min(1, (k * cell - start) / change));
      add(x1 + share * east, y1 + share * north);
    }
  }

  private void add(double localX, double localY) {
    if (count == x.length) {
      x = Arrays.copyOf(x, 2 * count);
      y = Arrays.copyOf(y, 2 * count);
    }
    x[count] = localX;
    y[count++] = localY;
  }

  double[] x() {
    return Arrays.copyOf(x, count);
  }

  double[] y() {
    return Arrays.copyOf(y, count);
  }
}
