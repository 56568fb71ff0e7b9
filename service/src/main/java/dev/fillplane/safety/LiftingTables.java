package dev.fillplane.safety;

/**
 * Tables 5 and 7 of the applications manual for the revised lifting equation (NIOSH Pub. 94-110,
 * 1994, revised September 2021), as printed.
 */
final class LiftingTables {

  /** Lifts a minute of the rows of table 5. */
  static final double[] FREQUENCIES = {0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15};

  /** Columns: short, moderate, long; in each hands under 30 in, then at 30 in or over. */
  static final double[][] FREQUENCY = {
    {1, 1, .95, .95, .85, .85},
    {.97, .97, .92, .92, .81, .81},
    {.94, .94, .88, .88, .75, .75},
    {.91, .91, .84, .84, .65, .65},
    {.88, .88, .79, .79, .55, .55},
    {.84, .84, .72, .72, .45, .45},
    {.80, .80, .60, .60, .35, .35},
    {.75, .75, .50, .50, .27, .27},
    {.70, .70, .42, .42, .22, .22},
    {.60, .60, .35, .35, .18, .18},
    {.52, .52, .30, .30, 0, .15},
    {.45, .45, .26, .26, 0, .13},
    {.41, .41, 0, .23, 0, 0},
    {.37, .37, 0, .21, 0, 0},
    {0, .34, 0, 0, 0, 0},
    {0, .31, 0, 0, 0, 0},
    {0, .28, 0, 0, 0, 0}
  };

  /** Rows: good, fair, poor; columns: hands under 30 in, at 30 in or over. */
  static final double[][] COUPLING = {{1, 1}, {.95, 1}, {.90, .90}};

  private LiftingTables() {}

  /** Table 5, on a straight line between its rows; none beyond 15 lifts a minute. */
  static double frequency(double liftsPerMinute, LiftingDuration duration, boolean high) {
    int column = column(duration) + (high ? 1 : 0);
    double lifts = Math.max(liftsPerMinute, FREQUENCIES[0]);
    for (int row = 1; row < FREQUENCIES.length; row++) {
      if (lifts <= FREQUENCIES[row]) {
        double share = (lifts - FREQUENCIES[row - 1]) / (FREQUENCIES[row] - FREQUENCIES[row - 1]);
        double before = FREQUENCY[row - 1][column];
        return before + share * (FREQUENCY[row][column] - before);
      }
    }
    return 0;
  }

  /** Table 7. */
  static double coupling(Coupling coupling, boolean high) {
    int row =
        switch (coupling) {
          case GOOD -> 0;
          case FAIR -> 1;
          case POOR -> 2;
        };
    return COUPLING[row][high ? 1 : 0];
  }

  private static int column(LiftingDuration duration) {
    return switch (duration) {
      case SHORT -> 0;
      case MODERATE -> 2;
      case LONG -> 4;
    };
  }
}
