package dev.fillplane.supply;

import java.util.Arrays;

/**
 * Quantiles of many values, linear between order statistics (type 7 of Hyndman and Fan, The
 * American Statistician 50, 1996). The values are put into equal classes, of which only those that
 * hold a wanted one are sorted; where values are spread evenly enough, the time grows with their
 * number.
 */
final class Quantiles {

  private final double[] grouped;
  private final int[] ends;
  private final boolean[] sorted;
  private final double least;
  private final double perClass;

  /**
   * Groups values.
   *
   * @param values at least one, all finite
   */
  Quantiles(double[] values) {
    int classes = Math.max(1, values.length / 8);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      low = value < low ? value : low;
      high = value > high ? value : high;
    }
    least = low;
    perClass = high > low ? classes / (high - low) : 0;
    ends = new int[classes];
    sorted = new boolean[classes];
    grouped = grouped(values);
  }

  /** Counts the classes, then fills each from its end; afterwards {@code ends} are begins. */
  private double[] grouped(double[] values) {
    int[] of = new int[values.length];
    for (int i = 0; i < values.length; i++) {
      of[i] = Math.min(ends.length - 1, (int) ((values[i] - least) * perClass));
      ends[of[i]]++;
    }
    for (int i = 1; i < ends.length; i++) {
      ends[i] += ends[i - 1];
    }
    double[] out = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      out[--ends[of[i]]] = values[i];
    }
    return out;
  }

  /** The quantile of a share from 0 to 1. */
  double at(double share) {
    double position = (grouped.length - 1) * share;
    int below = (int) position;
    double lower = inOrder(below);
    return below + 1 == grouped.length
        ? lower
        : lower + (position - below) * (inOrder(below + 1) - lower);
  }

  /** The value that stands at {@code rank} in rising order. */
  private double inOrder(int rank) {
    int found = Arrays.binarySearch(ends, rank);
    int within = found < 0 ? -found - 2 : last(found);
    if (!sorted[within]) {
      int end = within + 1 == ends.length ? grouped.length : ends[within + 1];
      Arrays.sort(grouped, ends[within], end);
      sorted[within] = true;
    }
    return grouped[rank];
  }

  /** The last class that begins there; those before it are empty. */
  private int last(int found) {
    int at = found;
    while (at + 1 < ends.length && ends[at + 1] == ends[found]) {
      at++;
    }
    return at;
  }
}
