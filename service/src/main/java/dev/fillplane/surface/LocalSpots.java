package dev.fillplane.surface;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Spots in an order of their own (by x, y, elevation, variance), so that the caller's order does
 * not matter, and about their own centre, so that large coordinates cost no digits.
 *
 * @param order where each spot stands in the caller's arrays
 * @param originX the caller's x of the centre
 * @param originY the caller's y of the centre
 * @param datum the caller's mean elevation
 * @param x plan coordinates about the centre
 * @param y plan coordinates about the centre
 * @param z elevations above the datum
 * @param variance variance of each measurement
 */
record LocalSpots(
    int[] order,
    double originX,
    double originY,
    double datum,
    double[] x,
    double[] y,
    double[] z,
    double[] variance) {

  static LocalSpots of(Spots spots) {
    int[] order = order(spots);
    double originX = mean(picked(spots.x(), order));
    double originY = mean(picked(spots.y(), order));
    double datum = mean(picked(spots.elevation(), order));
    return new LocalSpots(
        order,
        originX,
        originY,
        datum,
        less(picked(spots.x(), order), originX),
        less(picked(spots.y(), order), originY),
        less(picked(spots.elevation(), order), datum),
        picked(spots.variance(), order));
  }

  int count() {
    return x.length;
  }

  /** The same spots, none of them measured better than {@code least} says. */
  LocalSpots varianceAtLeast(double least) {
    return withVariance(Arrays.stream(variance).map(v -> Math.max(v, least)).toArray());
  }

  /** The same spots, all measured alike. */
  LocalSpots variance(double same) {
    double[] all = new double[count()];
    Arrays.fill(all, same);
    return withVariance(all);
  }

  private LocalSpots withVariance(double[] other) {
    return new LocalSpots(order, originX, originY, datum, x, y, z, other);
  }

  /** Some of the spots, about the same centre. */
  LocalSpots only(int[] chosen) {
    return new LocalSpots(
        Arrays.stream(chosen).map(i -> order[i]).toArray(),
        originX,
        originY,
        datum,
        picked(x, chosen),
        picked(y, chosen),
        picked(z, chosen),
        picked(variance, chosen));
  }

  private static int[] order(Spots spots) {
    return IntStream.range(0, spots.count())
        .boxed()
        .sorted(
            Comparator.<Integer>comparingDouble(i -> spots.x()[i])
                .thenComparingDouble(i -> spots.y()[i])
                .thenComparingDouble(i -> spots.elevation()[i])
                .thenComparingDouble(i -> spots.variance()[i]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private static double[] picked(double[] values, int[] chosen) {
    return Arrays.stream(chosen).mapToDouble(i -> values[i]).toArray();
  }

  /** The mean, taken about the first value to keep its digits. */
  static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value - values[0];
    }
    return values[0] + sum / values.length;
  }

  private static double[] less(double[] values, double origin) {
    return Arrays.stream(values).map(value -> value - origin).toArray();
  }
}
