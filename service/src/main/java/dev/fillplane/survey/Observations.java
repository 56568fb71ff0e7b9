package dev.fillplane.survey;

import dev.fillplane.finding.Place;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * All readings as parallel arrays that nobody writes to, in the order of the request.
 *
 * @param setups names of the setups, in the order of the request
 * @param errors standard deviation of a reading, by setup
 * @param names of the points
 * @param setup of each reading
 * @param point of each reading
 * @param reading distance below the plane of its setup
 * @param x where it was read on plan; NaN where that is not told
 * @param y where it was read on plan; NaN where that is not told
 * @param places where each reading stands in the request
 */
record Observations(
    String[] setups,
    double[] errors,
    PointNames names,
    int[] setup,
    int[] point,
    double[] reading,
    double[] x,
    double[] y,
    IntFunction<Place> places) {

  /** How many readings there are. */
  int count() {
    return reading.length;
  }

  /** Whether it is told where the reading {@code i} was taken. */
  boolean placed(int i) {
    return !Double.isNaN(x[i]) && !Double.isNaN(y[i]);
  }

  /** Index after the readings of the setup of the reading {@code from}; they follow each other. */
  int endOfSetup(int from) {
    int to = from;
    while (to < count() && setup[to] == setup[from]) {
      to++;
    }
    return to;
  }

  /** By how much two readings of one spot in {@code setup} differ at most, three deviations. */
  double tolerance(int setup) {
    return 3 * Math.sqrt(2) * errors[setup];
  }

  /** The same without the readings of the points that are {@code ignored}. */
  Observations without(boolean[] ignored) {
    int[] kept = IntStream.range(0, count()).filter(i -> !ignored[point[i]]).toArray();
    if (kept.length == count()) {
      return this;
    }
    return new Observations(
        setups,
        errors,
        names,
        pick(setup, kept),
        pick(point, kept),
        pick(reading, kept),
        pick(x, kept),
        pick(y, kept),
        i -> places.apply(kept[i]));
  }

  private static int[] pick(int[] values, int[] at) {
    return IntStream.of(at).map(i -> values[i]).toArray();
  }

  private static double[] pick(double[] values, int[] at) {
    return IntStream.of(at).mapToDouble(i -> values[i]).toArray();
  }
}
