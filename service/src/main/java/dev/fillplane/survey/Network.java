package dev.fillplane.survey;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Setups and points with the readings between them, in an order that depends neither on the order
 * of the readings nor on the names of the points, so that every sum comes out the same to the last
 * bit.
 *
 * <p>A <em>tie</em> is a point that carries height: a benchmark or a point with more than one
 * reading. Only ties enter the equations.
 */
final class Network {

  private final Observations all;
  private final double[] held;
  private final int[] start;
  private final int[] setup;
  private final double[] reading;
  private final int[] ties;
  private final int[][] tiesOfSetup;
  private final int[] readingsOfSetup;

  /**
   * @param held elevation of a benchmark by point, NaN for all others
   */
  Network(Observations all, double[] held, PointPositions positions) {
    this.all = all;
    this.held = held;
    start = new int[held.length + 1];
    setup = new int[all.count()];
    reading = new double[all.count()];
    gatherByPoint();
    sortWithinSetups();
    ties =
        IntStream.range(0, held.length)
            .filter(p -> count(p) > 1 || (count(p) == 1 && isHeld(p)))
            .boxed()
            .sorted(canonical().thenComparing(positions.order()))
            .mapToInt(Integer::intValue)
            .toArray();
    tiesOfSetup = gatherTies();
    readingsOfSetup = new int[setups()];
    IntStream.of(setup).forEach(s -> readingsOfSetup[s]++);
  }

  private void gatherByPoint() {
    for (int point : all.point()) {
      start[point + 1]++;
    }
    Arrays.parallelPrefix(start, Integer::sum);
    int[] next = Arrays.copyOf(start, held.length);
    for (int i = 0; i < all.count(); i++) {
      int at = next[all.point()[i]]++;
      setup[at] = all.setup()[i];
      reading[at] = all.reading()[i];
    }
  }

  /** The readings of a point come in the order of their setups already. */
  private void sortWithinSetups() {
    for (int p = 0; p < held.length; p++) {
      for (int from = from(p); from < to(p); from = endOfGroup(p, from)) {
        Arrays.sort(reading, from, endOfGroup(p, from));
      }
    }
  }

  private Comparator<Integer> canonical() {
    return (one, other) -> {
      int byHeight = Double.compare(held[one], held[other]);
      if (byHeight != 0) {
        return byHeight;
      }
      int bySetups = Arrays.compare(setup, from(one), to(one), setup, from(other), to(other));
      return bySetups != 0
          ? bySetups
          : Arrays.compare(reading, from(one), to(one), reading, from(other), to(other));
    };
  }

  private int[][] gatherTies() {
    int[] sizes = new int[setups()];
    eachGroupOfTies((point, s) -> sizes[s]++);
    int[][] gathered = IntStream.of(sizes).mapToObj(int[]::new).toArray(int[][]::new);
    Arrays.fill(sizes, 0);
    eachGroupOfTies((point, s) -> gathered[s][sizes[s]++] = point);
    return gathered;
  }

  private interface GroupUse {
    void use(int point, int setup);
  }

  private void eachGroupOfTies(GroupUse use) {
    for (int point : ties) {
      for (int from = from(point); from < to(point); from = endOfGroup(point, from)) {
        use.use(point, setup[from]);
      }
    }
  }

  int setups() {
    return all.setups().length;
  }

  int points() {
    return held.length;
  }

  /** The ties in their canonical order. */
  int[] ties() {
    return ties;
  }

  /** The ties that {@code setup} reads, in their canonical order. */
  int[] tiesOf(int setup) {
    return tiesOfSetup[setup];
  }

  /** Whether anything was read in {@code setup}. */
  boolean used(int setup) {
    return readingsOfSetup[setup] > 0;
  }

  boolean isHeld(int point) {
    return !Double.isNaN(held[point]);
  }

  double heldElevation(int point) {
    return held[point];
  }

  /** How many readings {@code point} has. */
  int count(int point) {
    return to(point) - from(point);
  }

  /** Index of the first reading of {@code point}; its readings follow each other. */
  int from(int point) {
    return start[point];
  }

  /** Index after the last reading of {@code point}. */
  int to(int point) {
    return start[point + 1];
  }

  /** Index after the readings of {@code point} in the setup of the reading {@code from}. */
  int endOfGroup(int point, int from) {
    int end = from + 1;
    while (end < to(point) && setup[end] == setup[from]) {
      end++;
    }
    return end;
  }

  /** The setup of a reading, by its index here. */
  int setup(int index) {
    return setup[index];
  }

  double reading(int index) {
    return reading[index];
  }

  /** One over the variance of a reading in {@code setup}. */
  double weight(int setup) {
    return 1 / (all.errors()[setup] * all.errors()[setup]);
  }
}
