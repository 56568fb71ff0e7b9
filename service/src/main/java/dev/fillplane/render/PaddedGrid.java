package dev.fillplane.render;

import dev.fillplane.depth.Grid;
import java.util.Arrays;

/**
 * The depths of a grid, carried on a few cells beyond the rooms, so that colours reach the walls
 * before they are cut there. All around lies a border without depth.
 */
final class PaddedGrid {

  private static final int CARRIED = 3;
  private static final int PAD = CARRIED + 1;
  private static final double NONE = Grid.OUTSIDE;

  private final Grid grid;
  private final int columns;
  private final int rows;
  private double[] depths;

  PaddedGrid(Grid grid) {
    this.grid = grid;
    columns = grid.columns() + 2 * PAD;
    rows = grid.rows() + 2 * PAD;
    depths = new double[columns * rows];
    Arrays.fill(depths, NONE);
    for (int row = 0; row < grid.rows(); row++) {
      int to = (row + PAD) * columns + PAD;
      System.arraycopy(grid.depths(), row * grid.columns(), depths, to, grid.columns());
    }
    for (int i = 0; i < CARRIED; i++) {
      carryOn();
    }
  }

  private void carryOn() {
    double[] more = depths.clone();
    for (int row = 1; row < rows - 1; row++) {
      for (int column = 1; column < columns - 1; column++) {
        if (depths[row * columns + column] == NONE) {
          more[row * columns + column] = beyond(column, row);
        }
      }
    }
    depths = more;
  }

  /** Straight on from the neighbours, their mean; nothing where there are none. */
  private double beyond(int column, int row) {
    double sum = 0;
    int count = 0;
    for (int right = -1; right <= 1; right++) {
      for (int up = -1; up <= 1; up++) {
        double near = depth(column + right, row + up);
        if (near != NONE) {
          double far = depth(column + 2 * right, row + 2 * up);
          sum += far == NONE ? near : 2 * near - far;
          count++;
        }
      }
    }
    return count == 0 ? NONE : sum / count;
  }

  int columns() {
    return columns;
  }

  int rows() {
    return rows;
  }

  double depth(int column, int row) {
    boolean inside = column >= 0 && row >= 0 && column < columns && row < rows;
    return inside ? depths[row * columns + column] : NONE;
  }

  double x(double column) {
    return grid.originX() + (column - PAD + 0.5) * grid.cell();
  }

  double y(double row) {
    return grid.originY() + (row - PAD + 0.5) * grid.cell();
  }
}
