package dev.fillplane.depth;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * Depths at the centres of square cells, row after row from the south-west.
 *
 * @param originX west edge of the first column
 * @param originY south edge of the first row
 * @param cell side of a cell
 * @param columns cells in a row
 * @param rows rows
 * @param depths depth at each centre, not negative; {@link #OUTSIDE} where the centre lies in no
 *     room. Never written to.
 */
public record Grid(
    @Measured(Dimension.PLAN) double originX,
    @Measured(Dimension.PLAN) double originY,
    @Measured(Dimension.PLAN) double cell,
    int columns,
    int rows,
    double[] depths) {

  /** Marks a cell whose centre lies in no room. */
  public static final double OUTSIDE = Double.NEGATIVE_INFINITY;

  /** Depth in a cell. */
  public double depth(int column, int row) {
    return depths[row * columns + column];
  }

  /** Whether the centre of a cell lies in a room. */
  public boolean covers(int column, int row) {
    return depth(column, row) != OUTSIDE;
  }

  /** Centre of a column. */
  public double x(int column) {
    return originX + (column + 0.5) * cell;
  }

  /** Centre of a row. */
  public double y(int row) {
    return originY + (row + 0.5) * cell;
  }
}
