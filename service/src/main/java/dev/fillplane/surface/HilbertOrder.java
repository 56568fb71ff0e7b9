package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;
import java.util.Arrays;

/**
 * Positions in the order of a Hilbert curve over their box, so that the next one is near the last
 * one; a triangulation grows fast that way. Positions in one cell of the curve come by x, then y,
 * then elevation, so that the order of the caller does not matter.
 */
final class HilbertOrder {

  /** Cells of the curve along a side of the box: 2 to this. */
  private static final int LEVELS = 20;

  private static final int INDEX_BITS = 23;
  private static final long INDEX = (1L << INDEX_BITS) - 1;

  /** Most positions that can be put in order. */
  static final int MOST = 1 << INDEX_BITS;

  private HilbertOrder() {}

  /** The numbers of the positions in their new order. */
  static int[] of(double[] x, double[] y, double[] z) {
    if (x.length > MOST) {
      throw new IllegalArgumentException("more than " + MOST + " positions");
    }
    Box box = Box.of(x, y);
    double scale = ((1 << LEVELS) - 1) / Math.max(box.side(), Double.MIN_NORMAL);
    long[] keys = new long[x.length];
    for (int i = 0; i < keys.length; i++) {
      Stopped.ifInterrupted();
      int column = (int) ((x[i] - box.west()) * scale);
      int row = (int) ((y[i] - box.south()) * scale);
      keys[i] = along(column, row) << INDEX_BITS | i;
    }
    Arrays.sort(keys);
    int[] order = new int[keys.length];
    for (int from = 0, to; from < keys.length; from = to) {
      Stopped.ifInterrupted();
      to = from + 1;
      while (to < keys.length && keys[to] >>> INDEX_BITS == keys[from] >>> INDEX_BITS) {
        to++;
      }
      for (int i = from; i < to; i++) {
        order[i] = (int) (keys[i] & INDEX);
      }
      if (to - from > 1) {
        sort(order, from, to, x, y, z);
      }
    }
    return order;
  }

  /** How far along the curve a cell is; the usual bit by bit turn of the quadrants. */
  private static long along(int column, int row) {
    int x = column;
    int y = row;
    long distance = 0;
    for (int side = 1 << (LEVELS - 1); side > 0; side >>= 1) {
      int east = (x & side) == 0 ? 0 : 1;
      int north = (y & side) == 0 ? 0 : 1;
      distance = distance << 2 | (3 * east ^ north);
      if (north == 0) {
        if (east == 1) {
          x = ~x;
          y = ~y;
        }
        int swapped = x;
        x = y;
        y = swapped;
      }
    }
    return distance;
  }

  private static void sort(int[] order, int from, int to, double[] x, double[] y, double[] z) {
    Integer[] run = new Integer[to - from];
    Arrays.setAll(run, i -> order[from + i]);
    Arrays.sort(
        run,
        (one, other) -> {
          int byX = Double.compare(x[one], x[other]);
          int byY = byX != 0 ? byX : Double.compare(y[one], y[other]);
          return byY != 0 ? byY : Double.compare(z[one], z[other]);
        });
    for (int i = from; i < to; i++) {
      order[i] = run[i - from];
    }
  }
}
