package dev.fillplane.surface;

import java.util.Arrays;

/**
 * How the spots lie: lengths that do not change when the plan is turned or moved. Spots closer than
 * {@link #SAME_PLACE} count as one.
 *
 * @param places number of different places
 * @param nearest median distance from a place to the next; positive if there are 2 places
 * @param extent largest distance between two places
 */
record Spacing(int places, double nearest, double extent) {

  /** Distance on plan under which two spots are one place: 1 mm. */
  static final double SAME_PLACE = 1e-3;

  static Spacing of(double[] x, double[] y) {
    double[] nearest = new double[x.length];
    int places = 0;
    double widest = 0;
    for (int i = 0; i < x.length; i++) {
      double least = Double.POSITIVE_INFINITY;
      boolean again = false;
      for (int j = 0; j < x.length; j++) {
        double dx = x[i] - x[j];
        double dy = y[i] - y[j];
        double square = dx * dx + dy * dy;
        if (square >= SAME_PLACE * SAME_PLACE) {
          least = Math.min(least, square);
          widest = Math.max(widest, square);
        } else {
          again |= j < i;
        }
      }
      if (!again) {
        nearest[places++] = least;
      }
    }
    return new Spacing(places, median(nearest, places), Math.sqrt(widest));
  }

  private static double median(double[] squares, int count) {
    Arrays.sort(squares, 0, count);
    double middle = squares[count / 2];
    return Double.isInfinite(middle) ? 0 : Math.sqrt(middle);
  }
}
