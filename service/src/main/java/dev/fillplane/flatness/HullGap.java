package dev.fillplane.flatness;

import java.util.function.Consumer;

/**
 * The gap under a straightedge in one window of a profile of evenly spaced heights: the edge rests
 * on two neighbouring corners of the upper hull, the gap is the largest vertical distance from the
 * floor up to that hull. What hangs over beyond the two contacts does not count.
 *
 * <p>Holds the result of the last window; not thread safe.
 */
final class HullGap {

  /** A distance to the hull, m, that is rounding. */
  private static final double TOUCHES = 1e-9;

  private final int[] corners;
  private double gap;
  private int from;
  private int at;
  private int to;

  /** For windows of up to {@code samples} heights. */
  HullGap(int samples) {
    corners = new int[samples];
  }

  /** Measures the window of {@code heights} from {@code first} to {@code last}, both included. */
  double measure(double[] heights, int first, int last) {
    gap = 0;
    from = first;
    at = first;
    to = first;
    int count = hull(heights, first, last);
    for (int corner = 1; corner < count; corner++) {
      under(heights, corners[corner - 1], corners[corner]);
    }
    return gap;
  }

  /**
   * Shows the hollow between each two neighbouring contacts of a window, from left to right; what
   * touches the hull between two corners is a contact as well.
   */
  void forEachHollow(double[] heights, int first, int last, Consumer<ProfileGap> visitor) {
    int count = hull(heights, first, last);
    for (int corner = 1; corner < count; corner++) {
      int left = corners[corner - 1];
      int right = corners[corner];
      int contact = left;
      for (int next = left + 1; next <= right; next++) {
        if (touches(heights, left, right, next)) {
          show(heights, contact, next, visitor);
          contact = next;
        }
      }
    }
  }

  private void show(double[] heights, int left, int right, Consumer<ProfileGap> visitor) {
    gap = 0;
    under(heights, left, right);
    if (gap > 0) {
      visitor.accept(result());
    }
  }

  private static boolean touches(double[] heights, int left, int right, int middle) {
    double slope = (heights[right] - heights[left]) / (right - left);
    return heights[left] + slope * (middle - left) - heights[middle] <= TOUCHES;
  }

  /** Monotone chain; corners that lie on a straight line are left out. */
  private int hull(double[] heights, int first, int last) {
    int count = 0;
    for (int next = first; next <= last; next++) {
      while (count > 1 && !isAbove(heights, corners[count - 2], corners[count - 1], next)) {
        count--;
      }
      corners[count++] = next;
    }
    return count;
  }

  private static boolean isAbove(double[] heights, int left, int middle, int right) {
    return (heights[middle] - heights[left]) * (right - left)
        > (heights[right] - heights[left]) * (middle - left);
  }

  private void under(double[] heights, int left, int right) {
    double slope = (heights[right] - heights[left]) / (right - left);
    for (int i = left + 1; i < right; i++) {
      double below = heights[left] + slope * (i - left) - heights[i];
      if (below > gap) {
        gap = below;
        from = left;
        at = i;
        to = right;
      }
    }
  }

  /** The last window as a result. */
  ProfileGap result() {
    return new ProfileGap(gap, from, at, to);
  }
}
