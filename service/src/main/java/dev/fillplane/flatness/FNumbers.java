package dev.fillplane.flatness;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.StatUtils;

/**
 * F-numbers of lines read every 12 in or 300 mm (ASTM E1155).
 *
 * <p>Curvatures {@code q = h(i) - 2 h(i-1) + h(i-2)}, differences {@code z = h(i) - h(i-10)}; in
 * inches {@code FF = 4.57 / (3 Sq + |mean q|)} and {@code FL = 12.5 / (3 Sz + |mean z|)}, S with n
 * - 1. Several lines: 1 / F^2 is the mean of their 1 / F^2, weighted by the count of q or z. The
 * two constants, S and the rules of combination are from memory; where lines may lie is published.
 */
public final class FNumbers {

  /** Larger numbers are told as this: a line without any spread has none that ends. */
  public static final double MOST = 1000;

  private static final double INCH = 0.0254;
  private static final double FLATNESS = 4.57;
  private static final double LEVELNESS = 12.5;
  private static final int TEN_FEET = 10;

  private FNumbers() {}

  /** FF of heights, m; empty where there are fewer than 4. */
  public static Optional<FNumber> flatness(double[] heights) {
    return number(FLATNESS, curvatures(heights));
  }

  /** FL of heights, m; empty where there are fewer than 12. */
  public static Optional<FNumber> levelness(double[] heights) {
    return number(LEVELNESS, differences(heights));
  }

  /** The number of several lines together; empty where there are none. */
  public static OptionalDouble combined(List<FNumber> numbers) {
    double sum = 0;
    int count = 0;
    for (FNumber number : numbers) {
      sum += number.count() / (number.value() * number.value());
      count += number.count();
    }
    return sum > 0 ? OptionalDouble.of(Math.sqrt(count / sum)) : OptionalDouble.empty();
  }

  /**
   * The number of several sections together: 1 / F^2 is the mean of theirs, weighted by area.
   *
   * @param numbers of the sections, positive
   * @param areas of the sections in the same order, m2; positive
   */
  public static OptionalDouble combined(List<Double> numbers, List<Double> areas) {
    double sum = 0;
    double all = 0;
    for (int i = 0; i < numbers.size(); i++) {
      sum += areas.get(i) / (numbers.get(i) * numbers.get(i));
      all += areas.get(i);
    }
    return sum > 0 ? OptionalDouble.of(Math.sqrt(all / sum)) : OptionalDouble.empty();
  }

  static double[] curvatures(double[] heights) {
    double[] q = new double[Math.max(0, heights.length - 2)];
    for (int i = 0; i < q.length; i++) {
      q[i] = heights[i + 2] - 2 * heights[i + 1] + heights[i];
    }
    return q;
  }

  static double[] differences(double[] heights) {
    double[] z = new double[Math.max(0, heights.length - TEN_FEET)];
    for (int i = 0; i < z.length; i++) {
      z[i] = heights[i + TEN_FEET] - heights[i];
    }
    return z;
  }

  private static Optional<FNumber> number(double constant, double[] values) {
    if (values.length < 2) {
      return Optional.empty();
    }
    double spread = 3 * Math.sqrt(StatUtils.variance(values)) + Math.abs(StatUtils.mean(values));
    double least = constant / MOST;
    return Optional.of(new FNumber(constant / Math.max(spread / INCH, least), values.length));
  }
}
