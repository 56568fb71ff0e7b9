package dev.fillplane.surface;

import java.util.Arrays;

/** Sums area and first moments by cell. */
final class CellSums {

  /** Parts of a squared cell; what is smaller is rounding. */
  private static final double SLIVER = 1e-12;

  private final Lattice lattice;
  private final int[] slot;
  private final int[] cell;
  private final double[] area;
  private final double[] momentX;
  private final double[] momentY;
  private final double[] volume;
  private int used;

  CellSums(Lattice lattice, int most) {
    this.lattice = lattice;
    slot = new int[lattice.cells()];
    cell = new int[most];
    area = new double[most];
    momentX = new double[most];
    momentY = new double[most];
    volume = new double[most];
  }

  void add(int toCell, double part, double x, double y, double elevation) {
    if (slot[toCell] == 0) {
      cell[used] = toCell;
      slot[toCell] = ++used;
    }
    int i = slot[toCell] - 1;
    area[i] += part;
    momentX[i] += part * x;
    momentY[i] += part * y;
    volume[i] += part * elevation;
  }

  /** The cells in the order in which they came; moments become means in place. */
  RoomCells cells() {
    int n = 0;
    for (int i = 0; i < used; i++) {
      if (area[i] > SLIVER * lattice.cell() * lattice.cell()) {
        cell[n] = cell[i];
        momentX[n] = momentX[i] / area[i];
        momentY[n] = momentY[i] / area[i];
        volume[n] = volume[i] / area[i];
        area[n++] = area[i];
      }
    }
    return new RoomCells(
        Arrays.copyOf(cell, n),
        Arrays.copyOf(momentX, n),
        Arrays.copyOf(momentY, n),
        Arrays.copyOf(area, n),
        Arrays.copyOf(volume, n));
  }
}
