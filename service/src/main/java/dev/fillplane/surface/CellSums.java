package dev.fillplane.surface;

import java.util.Arrays;

/** Sums area and first moments by cell. */
final class CellSums {

  /** Parts of a squared cell; what is smaller is rounding. */
  private static final double SLIVER = 1e-12;

  private final Lattice lattice;
  private final int[] slot;
  private final double[][] moments;
  private int used;

  CellSums(Lattice lattice, int most) {
    this.lattice = lattice;
    slot = new int[lattice.cells()];
    moments = new double[4][most];
  }

  void add(int cell, double area, double x, double y, double elevation) {
    if (slot[cell] == 0) {
      slot[cell] = ++used;
    }
    int i = slot[cell] - 1;
    moments[0][i] += area;
    moments[1][i] += area * x;
    moments[2][i] += area * y;
    moments[3][i] += area * elevation;
  }

  FloorCells cells() {
    double[][] kept = new double[4][used];
    int n = 0;
    for (int i = 0; i < used; i++) {
      double area = moments[0][i];
      if (area > SLIVER * lattice.cell() * lattice.cell()) {
        kept[0][n] = lattice.originX() + moments[1][i] / area;
        kept[1][n] = lattice.originY() + moments[2][i] / area;
        kept[2][n] = area;
        kept[3][n++] = moments[3][i] / area;
      }
    }
    int count = n;
    return new FloorCells(
        Arrays.copyOf(kept[0], count),
        Arrays.copyOf(kept[1], count),
        Arrays.copyOf(kept[2], count),
        Arrays.copyOf(kept[3], count));
  }
}
