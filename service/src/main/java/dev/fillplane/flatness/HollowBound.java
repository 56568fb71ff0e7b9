package dev.fillplane.flatness;

/**
 * Bounds the gap under a straightedge in every window of a profile without laying the edge.
 *
 * <p>The depth of a hollow under a chord is the sum of the second differences of the profile under
 * it, each weighed by a triangle that is nowhere higher than a quarter of the chord; those that
 * bend down only make it shallower. So no gap in a window of n steps is more than n / 4 times the
 * sum of its positive second differences. The bound is twice the gap where the floor is an even
 * bowl.
 */
final class HollowBound {

  /** Rounding of the sums, m. */
  private static final double ROUNDING = 1e-12;

  private final double[] sums;
  private final int steps;

  /** For windows of {@code steps} of {@code heights}. */
  HollowBound(double[] heights, int steps) {
    this.steps = steps;
    sums = new double[heights.length];
    for (int i = 1; i + 1 < heights.length; i++) {
      double bend = heights[i - 1] - 2 * heights[i] + heights[i + 1];
      sums[i] = sums[i - 1] + Math.max(0, bend);
    }
  }

  /** No gap in the window that begins with sample {@code first} is larger. */
  double from(int first) {
    return steps / 4.0 * (sums[Math.max(first, first + steps - 1)] - sums[first]) + ROUNDING;
  }
}
