package dev.fillplane.surface;

import dev.fillplane.room.Position;
import java.util.Arrays;

/**
 * The pieces of cells that outlines cut, as fans of triangles with signed areas: over the fan of a
 * ring, convex or not, any integral of a function of the place adds up to that over the ring.
 */
final class TriangleList {

  private static final int VALUES = 10;

  private final Lattice lattice;
  private final NodeHeights heights;
  private final double shiftX;
  private final double shiftY;
  private double[] values = new double[512];
  private int size;

  TriangleList(Lattice lattice, NodeHeights heights, Position about) {
    this.lattice = lattice;
    this.heights = heights;
    shiftX = lattice.originX() - about.x();
    shiftY = lattice.originY() - about.y();
  }

  void add(Region.Piece piece) {
    if (!heights.knows(piece.cell())) {
      return;
    }
    double[] x = piece.ring().x();
    double[] y = piece.ring().y();
    for (int i = 1; i < x.length - 1; i++) {
      double twice = (x[i] - x[0]) * (y[i + 1] - y[0]) - (x[i + 1] - x[0]) * (y[i] - y[0]);
      if (twice != 0) {
        begin(twice / 2);
        corner(piece, x[0], y[0]);
        corner(piece, x[i], y[i]);
        corner(piece, x[i + 1], y[i + 1]);
      }
    }
  }

  private void begin(double area) {
    if (size + VALUES > values.length) {
      values = Arrays.copyOf(values, 2 * values.length);
    }
    values[size++] = area;
  }

  private void corner(Region.Piece piece, double x, double y) {
    int cell = piece.cell();
    values[size++] = x + shiftX;
    values[size++] = y + shiftY;
    values[size++] =
        heights.at(cell, piece.triangle(), x - lattice.centreX(cell), y - lattice.centreY(cell));
  }

  /** Signed area, then x, y and floor of the corners, triangle after triangle. */
  double[] values() {
    return Arrays.copyOf(values, size);
  }
}
