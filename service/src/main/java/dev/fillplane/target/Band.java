package dev.fillplane.target;

/**
 * Between which heights the pour has to be at a position.
 *
 * @param kind a fixed height or a ceiling
 * @param index its number in the request
 * @param lowest negative infinity for a ceiling
 */
record Band(BoundKind kind, int index, double x, double y, double lowest, double highest) {

  /** By how much a height is outside; not positive within. */
  double off(double height) {
    return Math.max(height - highest, lowest - height);
  }
}
