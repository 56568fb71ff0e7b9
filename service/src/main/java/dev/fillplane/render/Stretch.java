package dev.fillplane.render;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of time that is drawn in one row.
 *
 * @param from in seconds from the start of the work
 * @param to where it ends; the next one begins there
 */
record Stretch(double from, double to) {

  /** Where lanes begin and end on the picture, px. */
  static final double LEFT = 130;

  static final double RIGHT = 776;

  private static final double MINUTE = 60;

  /** Minutes in a row, and minutes between two marks of its axis. */
  private static final int[][] ROWS = {{20, 2}, {30, 5}, {60, 5}, {120, 10}, {240, 20}};

  /** A longer pour goes on more rows of the longest kind. */
  private static final int MOST_ROWS = 12;

  /** The rows of a pour that takes so long; at least one. */
  static List<Stretch> of(double duration) {
    double length = MINUTE * row(duration)[0];
    List<Stretch> rows = new ArrayList<>();
    int count = (int) Math.max(1, Math.ceil(duration / length - 1e-9));
    for (int i = 0; i < count; i++) {
      rows.add(new Stretch(i * length, (i + 1) * length));
    }
    return rows;
  }

  private static int[] row(double duration) {
    for (int[] row : ROWS) {
      if (duration <= MOST_ROWS * MINUTE * row[0] && (row[0] > 20 || duration <= 2 * 20 * MINUTE)) {
        return row;
      }
    }
    return ROWS[ROWS.length - 1];
  }

  /** Seconds from mark to mark of the axis. */
  double mark() {
    for (int[] row : ROWS) {
      if (Math.abs(MINUTE * row[0] - (to - from)) < 1) {
        return MINUTE * row[1];
      }
    }
    throw new IllegalStateException("no such row: " + (to - from));
  }

  /** Whether something that takes some time shows in it. */
  boolean shows(double begin, double end) {
    return begin < to && end > from;
  }

  /** Whether a moment lies in it. */
  boolean holds(double moment) {
    return moment >= from && moment < to;
  }

  /** Where a moment lies, px; beyond its ends at these. */
  double x(double moment) {
    double share = (moment - from) / (to - from);
    return LEFT + Math.max(0, Math.min(1, share)) * (RIGHT - LEFT);
  }
}
