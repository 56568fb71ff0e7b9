package dev.fillplane.survey;

import java.util.List;

/**
 * Many points as flat numbers, row after row. Its points are named by their row, from 1.
 *
 * @param columns what each number of a row is: x, y and either reading or elevation, in any order
 * @param values the rows, in SI; a whole number of them
 */
public record Table(List<Column> columns, double[] values) {

  /** Copies the columns; the values are taken as they are and never written to. */
  public Table {
    columns = List.copyOf(columns);
  }

  /** The number of whole rows. */
  public int rows() {
    return values.length / columns.size();
  }
}
