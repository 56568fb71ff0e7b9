package dev.fillplane.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the quantiles of a library that sorts all values. */
class QuantilesTest {

  private static final double[] SHARES = {0.0001, 0.1, 0.25, 0.5, 0.9, 0.95, 0.9999, 1};

  @Test
  void halfWayBetweenTwoValues() {
    assertEquals(2.5, new Quantiles(new double[] {4, 1, 3, 2}).at(0.5), 0);
    assertEquals(1, new Quantiles(new double[] {4, 1, 3, 2}).at(0), 0);
    assertEquals(4, new Quantiles(new double[] {4, 1, 3, 2}).at(1), 0);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7, 8, 9, 100, 4096})
  void spreadEvenlyOrNot(int count) {
    Random random = new Random(count);
    check(random.doubles(count, 10, 20).toArray());
    check(random.doubles(count).map(value -> Math.exp(50 * value)).toArray());
    check(random.ints(count, 0, 3).mapToDouble(value -> value).toArray());
    check(random.doubles(count).map(value -> value < 0.7 ? 0 : value).toArray());
  }

  /** Eight small values, then large ones in rising order with nothing between. */
  @Test
  void firstBehindAGap() {
    double[] values = new double[32];
    Arrays.setAll(values, i -> i < 8 ? 0.001 * i : 0.77 + 0.01 * (i - 8));
    assertEquals(0.77, new Quantiles(values).at(8.0 / 31), 1e-9);
    check(values);
  }

  @Test
  void allTheSame() {
    double[] same = new double[50];
    Arrays.fill(same, 7.25);
    check(same);
  }

  /** Sorting only what is asked for must not lose what is asked for next. */
  private static void check(double[] values) {
    Percentile slow = new Percentile().withEstimationType(EstimationType.R_7);
    Quantiles fast = new Quantiles(values);
    for (double share : SHARES) {
      double expected = slow.evaluate(values, 100 * share);
      double rounding = 1e-10 * Math.max(1, Math.abs(expected));
      assertEquals(expected, fast.at(share), rounding, "share " + share);
    }
  }
}
