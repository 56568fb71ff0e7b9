package dev.fillplane.depth;

import dev.fillplane.quantity.UnitSystem;
import java.util.stream.IntStream;

/**
 * Chooses round depths for contours: whole multiples, below the largest depth, of a step that a
 * person reads off a rule. Metric steps are 1, 2, 5 times a power of ten in mm (4 where 5 would
 * give fewer than four lines), the others 1/16 in and its doubles. There are 4 to 8 lines, fewer
 * only where the pour is so thin that the smallest step (1 mm, 1/16 in) gives no more.
 */
public final class ContourLevels {

  private static final int MOST = 8;
  private static final int FEWEST = 4;
  private static final double MILLIMETRE = 1e-3;
  private static final double SIXTEENTH = 0.0254 / 16;

  private ContourLevels() {}

  /** Depths in m, rising; none where nothing is poured. */
  public static double[] choose(UnitSystem units, double maximumDepth) {
    double step = units == UnitSystem.METRIC ? metricStep(maximumDepth) : doubled(maximumDepth);
    return IntStream.rangeClosed(1, count(maximumDepth, step)).mapToDouble(i -> i * step).toArray();
  }

  /** Multiples of a step below a depth. */
  private static int count(double depth, double step) {
    return (int) Math.max(0, Math.ceil(depth / step - 1e-9) - 1);
  }

  private static double metricStep(double depth) {
    for (double decade = MILLIMETRE; ; decade *= 10) {
      for (int times : new int[] {1, 2, 5}) {
        double step = times * decade;
        if (count(depth, step) <= MOST) {
          boolean few = times == 5 && count(depth, step) < FEWEST;
          return few ? 4 * decade : step;
        }
      }
    }
  }

  private static double doubled(double depth) {
    double step = SIXTEENTH;
    while (count(depth, step) > MOST) {
      step *= 2;
    }
    return step;
  }
}
