package dev.fillplane.fuzz;

import java.util.List;
import java.util.Random;

/** Choices by chance. */
final class Chance {

  private Chance() {}

  /** True with a chance of one in {@code of}. */
  static boolean oneIn(int of, Random random) {
    return random.nextInt(of) == 0;
  }

  static <T> T of(List<T> choices, Random random) {
    return choices.get(random.nextInt(choices.size()));
  }

  @SafeVarargs
  static <T> T of(Random random, T... choices) {
    return choices[random.nextInt(choices.length)];
  }

  /** Between two numbers, to a millionth of their distance. */
  static double between(double from, double to, Random random) {
    return from + (to - from) * random.nextInt(1_000_001) / 1_000_000;
  }

  /** A number of any magnitude between two powers of ten. */
  static double ofMagnitude(int from, int to, Random random) {
    return Math.pow(10, between(from, to, random));
  }
}
