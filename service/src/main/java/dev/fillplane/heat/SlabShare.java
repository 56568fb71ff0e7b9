package dev.fillplane.heat;

/**
 * Share of the difference between mix and slab that is left after some time on the slab, by depth.
 *
 * <p>A table for 5, 10 and 20 mm at 1, 5 and 10 minutes (derived from conduction into concrete;
 * common practice, no source), linear between its rows and columns. Documented extension: all is
 * left at the start, nothing after an hour, nothing in no depth at all; a deeper pour is held at 20
 * mm, though it keeps more.
 */
final class SlabShare {

  private static final double[] DEPTHS = {0, 0.005, 0.010, 0.020};
  private static final double[] TIMES = {0, 60, 300, 600, 3600};
  private static final double[][] LEFT = {
    {1, 0, 0, 0, 0},
    {1, 0.50, 0.25, 0.18, 0},
    {1, 0.74, 0.46, 0.34, 0},
    {1, 0.87, 0.70, 0.59, 0},
  };

  private SlabShare() {}

  /** Share left, 0 to 1, at a depth that is not negative after a time that is not negative. */
  static double left(double depth, double time) {
    int row = interval(DEPTHS, depth);
    double along = along(DEPTHS, row, depth);
    return (1 - along) * inRow(LEFT[row], time) + along * inRow(LEFT[row + 1], time);
  }

  private static double inRow(double[] row, double time) {
    int column = interval(TIMES, time);
    double along = along(TIMES, column, time);
    return (1 - along) * row[column] + along * row[column + 1];
  }

  private static int interval(double[] knots, double value) {
    int i = 0;
    while (i < knots.length - 2 && value > knots[i + 1]) {
      i++;
    }
    return i;
  }

  private static double along(double[] knots, int i, double value) {
    return Math.max(0, Math.min(1, (value - knots[i]) / (knots[i + 1] - knots[i])));
  }
}
