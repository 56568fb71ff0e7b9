package dev.fillplane.survey;

/**
 * The readings of one point, one group a setup, with the mean reading and the weight of each group.
 */
final class Sight {

  private final int point;
  private final int[] setups;
  private final double[] readings;
  private final double[] weights;
  private final double weight;

  Sight(Network network, int point) {
    this.point = point;
    int groups = groups(network, point);
    setups = new int[groups];
    readings = new double[groups];
    weights = new double[groups];
    int from = network.from(point);
    double sum = 0;
    for (int g = 0; g < groups; g++) {
      int to = network.endOfGroup(point, from);
      setups[g] = network.setup(from);
      readings[g] = mean(network, from, to);
      weights[g] = (to - from) * network.weight(setups[g]);
      sum += weights[g];
      from = to;
    }
    weight = sum;
  }

  private static int groups(Network network, int point) {
    int groups = 0;
    int from = network.from(point);
    while (from < network.to(point)) {
      from = network.endOfGroup(point, from);
      groups++;
    }
    return groups;
  }

  /** Relative to the first reading, so that equal readings have exactly that mean. */
  private static double mean(Network network, int from, int to) {
    double first = network.reading(from);
    double sum = 0;
    for (int i = from + 1; i < to; i++) {
      sum += network.reading(i) - first;
    }
    return first + sum / (to - from);
  }

  int point() {
    return point;
  }

  /** How many setups read the point. */
  int groups() {
    return setups.length;
  }

  int setup(int group) {
    return setups[group];
  }

  /** The mean reading of a group. */
  double reading(int group) {
    return readings[group];
  }

  double weight(int group) {
    return weights[group];
  }

  /** The weight of all readings together. */
  double weight() {
    return weight;
  }

  /** The mean of one value a group, weighted. */
  double mean(double[] values) {
    double sum = 0;
    for (int g = 0; g < values.length; g++) {
      sum += weights[g] * values[g];
    }
    return sum / weight;
  }
}
