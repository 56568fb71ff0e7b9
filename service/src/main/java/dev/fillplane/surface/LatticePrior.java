package dev.fillplane.surface;

import java.util.Arrays;

/**
 * Covariances between the middles of the cells of a lattice, before any reading. On a lattice they
 * depend only on how many columns and rows lie between, so each is worked out once.
 */
final class LatticePrior implements FieldFactor.Prior {

  private final double[] covariances;
  private final int[] at;
  private final int still;

  private LatticePrior(double[] covariances, int[] at, int still) {
    this.covariances = covariances;
    this.at = at;
    this.still = still;
  }

  static FieldFactor.Prior of(RoomLattice lattice, Correlation correlation, double sill) {
    int n = lattice.count();
    // Rooms far from each other have a vast lattice with few cells.
    if (lattice.isSparse()) {
      double[] x = lattice.x();
      double[] y = lattice.y();
      return (place, row) -> {
        correlation.fill(x[place], y[place], x, y, place, n, row);
        scale(row, place, sill);
      };
    }
    int columns = (int) lattice.columns();
    int across = 2 * columns - 1;
    int[] at = new int[n];
    Arrays.setAll(at, i -> (int) (lattice.rowOf(i) * across + lattice.columnOf(i)));
    double[] table = table(lattice, correlation, sill);
    return new LatticePrior(table, at, columns - 1);
  }

  /** By rows between, then by columns between from the furthest west to the furthest east. */
  private static double[] table(RoomLattice lattice, Correlation correlation, double sill) {
    int columns = (int) lattice.columns();
    int across = 2 * columns - 1;
    double[] table = new double[across * (int) lattice.rows()];
    double[] x = new double[across];
    double[] y = new double[across];
    double[] row = new double[across];
    Arrays.setAll(x, i -> (i - columns + 1) * lattice.width());
    for (int between = 0; between < lattice.rows(); between++) {
      Arrays.fill(y, between * lattice.height());
      correlation.fill(0, 0, x, y, 0, across, row);
      scale(row, 0, sill);
      System.arraycopy(row, 0, table, between * across, across);
    }
    return table;
  }

  private static void scale(double[] row, int from, double sill) {
    for (int i = from; i < row.length; i++) {
      row[i] *= sill;
    }
  }

  @Override
  public void fill(int place, double[] row) {
    int shift = still - at[place];
    for (int i = place; i < at.length; i++) {
      row[i] = covariances[at[i] + shift];
    }
  }
}
