package dev.fillplane.flatness;

/**
 * Flatness limits of DIN 18202 table 3: straight lines between the distances of the table, rounded
 * half up to whole millimetres; above 15 m the last value (that part from memory).
 */
final class Din18202 {

  private static final double[] SPANS = {0.1, 1, 4, 10, 15};

  private static final int[][] LIMITS_MM = {
    {10, 15, 20, 25, 30},
    {5, 8, 12, 15, 20},
    {2, 4, 10, 12, 15},
    {1, 3, 9, 12, 15},
    {5, 10, 15, 25, 30},
    {3, 5, 10, 20, 25},
    {2, 3, 8, 15, 20}
  };

  /** Keeps a half that came out a last digit too small a half. */
  private static final double HALF_GUARD = 1e-9;

  private Din18202() {}

  /**
   * The limit of {@code line} (1 to 7) between contacts {@code span} apart, m.
   *
   * @throws IllegalArgumentException if there is no such line or the span is under 0.1 m
   */
  static double limit(int line, double span) {
    if (line < 1 || line > LIMITS_MM.length || !(span >= SPANS[0])) {
      throw new IllegalArgumentException("line " + line + ", span " + span);
    }
    int[] limits = LIMITS_MM[line - 1];
    int next = 1;
    while (next < SPANS.length && SPANS[next] < span) {
      next++;
    }
    if (next == SPANS.length) {
      return limits[next - 1] / 1000.0;
    }
    double share = (span - SPANS[next - 1]) / (SPANS[next] - SPANS[next - 1]);
    double millimetres = limits[next - 1] + share * (limits[next] - limits[next - 1]);
    return Math.floor(millimetres + 0.5 + HALF_GUARD) / 1000;
  }
}
