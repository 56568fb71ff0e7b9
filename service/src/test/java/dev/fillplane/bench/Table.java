package dev.fillplane.bench;

import java.util.Arrays;
import java.util.Locale;
import java.util.StringJoiner;

/** A table of a report, in Markdown. */
public final class Table {

  private final StringBuilder text = new StringBuilder();

  private Table() {}

  /** A table with these heads. */
  public static Table of(String... heads) {
    Table table = new Table();
    table.row((Object[]) heads);
    String[] lines = new String[heads.length];
    Arrays.fill(lines, "---");
    return table.row((Object[]) lines);
  }

  /** Adds a row; numbers are written with three figures. */
  public Table row(Object... cells) {
    StringJoiner row = new StringJoiner(" | ", "| ", " |\n");
    for (Object cell : cells) {
      row.add(cell instanceof Double number ? figures(number) : String.valueOf(cell));
    }
    text.append(row);
    return this;
  }

  /** Adds a row about a goal that a number may reach at most. */
  public Table atMost(String what, double value, double goal, String unit) {
    return goal(what, value, "at most " + figures(goal) + unit, value <= goal, unit);
  }

  /** Adds a row about a goal that a number must reach at least. */
  public Table atLeast(String what, double value, double goal, String unit) {
    return goal(what, value, "at least " + figures(goal) + unit, value >= goal, unit);
  }

  private Table goal(String what, double value, String goal, boolean met, String unit) {
    return row(what, figures(value) + unit, goal, met ? "met" : "**missed**");
  }

  /** A number with three figures; more only before the point. */
  public static String figures(double value) {
    if (value == 0 || !Double.isFinite(value)) {
      return value == 0 ? "0" : "-";
    }
    int before = (int) Math.floor(Math.log10(Math.abs(value))) + 1;
    int decimals = Math.max(0, Math.min(6, 3 - before));
    return String.format(Locale.ROOT, "%,." + decimals + "f", value);
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
