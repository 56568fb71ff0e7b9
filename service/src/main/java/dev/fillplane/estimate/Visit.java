package dev.fillplane.estimate;

/**
 * One coming of the crew.
 *
 * @param people who come
 * @param attended time on site, summed over them
 * @param pours whether a layer is poured
 */
record Visit(int people, double attended, boolean pours) {

  private static final double LAST_DIGITS = 1e-9;

  /** Half days that each of them is paid for, rounded up. */
  double halfDays(double halfDay) {
    return Math.ceil(Math.max(0, attended / people / halfDay - LAST_DIGITS));
  }
}
