package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Flattens a table: its rows are the readings of one setup, or elevations. */
final class TableReader {

  /** Name of the one setup of a table of readings. */
  static final String SETUP = "table";

  private TableReader() {}

  /** Whether columns and values make whole rows of x, y and one height; else errors. */
  static boolean check(Table table, Place place, Findings findings) {
    boolean fits = columnsFit(table.columns(), place.at("columns"), findings);
    int columns = table.columns().size();
    if (columns > 0 && table.values().length % columns != 0) {
      findings.error(
          "table-row-incomplete",
          place.at("values"),
          "values",
          table.values().length,
          "columns",
          columns);
      return false;
    }
    return fits;
  }

  private static boolean columnsFit(List<Column> columns, Place place, Findings findings) {
    int before = findings.errors().size();
    Set<Column> met = EnumSet.noneOf(Column.class);
    for (int c = 0; c < columns.size(); c++) {
      if (!met.add(columns.get(c))) {
        findings.error("column-repeated", place.at(c), "column", name(columns.get(c)));
      }
    }
    for (Column needed : List.of(Column.X, Column.Y)) {
      if (!met.contains(needed)) {
        findings.error("column-missing", place, "column", name(needed));
      }
    }
    if (met.contains(Column.READING) == met.contains(Column.ELEVATION)) {
      findings.error("table-height-column", place);
    }
    return findings.errors().size() == before;
  }

  private static String name(Column column) {
    return column.name().toLowerCase(Locale.ROOT);
  }

  /** The rows of a table with a column {@code reading}, as one setup. */
  static Observations read(Table table, double error, Place place) {
    int rows = table.rows();
    int[] point = new int[rows];
    Arrays.setAll(point, i -> i);
    int width = table.columns().size();
    int heights = table.columns().indexOf(Column.READING);
    return new Observations(
        new String[] {SETUP},
        new double[] {error},
        PointNames.rows(rows),
        new int[rows],
        point,
        column(table, Column.READING),
        column(table, Column.X),
        column(table, Column.Y),
        i -> place.at("values").at(i * width + heights));
  }

  /** The numbers of one column, by row. */
  static double[] column(Table table, Column column) {
    int width = table.columns().size();
    int offset = table.columns().indexOf(column);
    double[] numbers = new double[table.rows()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = table.values()[i * width + offset];
    }
    return numbers;
  }
}
