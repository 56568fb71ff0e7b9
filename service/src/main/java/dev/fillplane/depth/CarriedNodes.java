package dev.fillplane.depth;

import java.util.Arrays;

/**
 * Values at the nodes of a lattice, carried on a few nodes beyond where they are known. All around
 * lies a border without values. Immutable once it is made.
 *
 * @see LevelRings
 */
public final class CarriedNodes {

  private static final int CARRIED = 3;
  private static final int PAD = CARRIED + 1;
  private static final double NONE = Double.NaN;

  private final int columns;
  private final int rows;
  private double[] values;

  private CarriedNodes(int columns, int rows, double[] known) {
    this.columns = columns + 2 * PAD;
    this.rows = rows + 2 * PAD;
    values = new double[this.columns * this.rows];
    Arrays.fill(values, NONE);
    for (int row = 0; row < rows; row++) {
      System.arraycopy(known, row * columns, values, (row + PAD) * this.columns + PAD, columns);
    }
    for (int i = 0; i < CARRIED; i++) {
      carryOn();
    }
  }

  /**
   * Carries values on.
   *
   * @param known by row and then column; NaN where unknown; length columns times rows
   */
  public static CarriedNodes of(int columns, int rows, double[] known) {
    return new CarriedNodes(columns, rows, known);
  }

  /** The depths of a grid, at the centres of its cells. */
  public static CarriedNodes of(Grid grid) {
    double[] known = Arrays.stream(grid.depths()).map(d -> d == Grid.OUTSIDE ? NONE : d).toArray();
    return new CarriedNodes(grid.columns(), grid.rows(), known);
  }

  private void carryOn() {
    double[] more = values.clone();
    for (int row = 1; row < rows - 1; row++) {
      for (int column = 1; column < columns - 1; column++) {
        if (Double.isNaN(values[row * columns + column])) {
          more[row * columns + column] = beyond(column, row);
        }
      }
    }
    values = more;
  }

  /** Straight on from the neighbours, their mean; nothing where there are none. */
  private double beyond(int column, int row) {
    double sum = 0;
    int count = 0;
    for (int right = -1; right <= 1; right++) {
      for (int up = -1; up <= 1; up++) {
        double near = at(column + right, row + up);
        if (!Double.isNaN(near)) {
          double far = at(column + 2 * right, row + 2 * up);
          sum += Double.isNaN(far) ? near : 2 * near - far;
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

  double at(int column, int row) {
    boolean inside = column >= 0 && row >= 0 && column < columns && row < rows;
    return inside ? values[row * columns + column] : NONE;
  }

  /** Whether any value of a row is at least at a level. */
  boolean reaches(int row, double level) {
    for (int i = row * columns; i < (row + 1) * columns; i++) {
      if (values[i] >= level) {
        return true;
      }
    }
    return false;
  }

  /** The column of the lattice that one of the carried columns is. */
  double column(int carried) {
    return (double) carried - PAD;
  }

  /** The row of the lattice that one of the carried rows is. */
  double row(int carried) {
    return (double) carried - PAD;
  }
}
