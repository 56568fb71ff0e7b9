package dev.fillplane.estimate;

import dev.fillplane.finding.Stopped;
import dev.fillplane.supply.BagOdds;
import org.apache.commons.math3.special.Erf;

/**
 * The bags that several units take together from one lot, as units are added.
 *
 * <p>Given the yield of the lot, the units are independent: means and variances of their whole bags
 * add up, and the sum is taken as normal with a half as the correction of continuity. The yield
 * stays common to all: its normal error is integrated over by the trapezoidal rule. A sum of few
 * units is out by a bag or so where their odds are far from normal. Deterministic.
 */
final class LotSums {

  private static final double REACH = 4.5;
  private static final double STEP = 0.15;
  private static final int NODES = 61;

  /** The integral goes in steps this many times finer, between which the sums are straight. */
  private static final int FINER = 8;

  private final double[] means = new double[NODES];
  private final double[] variances = new double[NODES];

  /** Adds a unit. */
  void add(UnitNeed unit) {
    for (int node = 0; node < NODES; node++) {
      Stopped.ifInterrupted();
      double yield = BagOdds.lotYield(STEP * node - REACH);
      double sum = 0;
      double squares = 0;
      for (double need : unit.needs()) {
        double bags = BagOdds.whole(need / yield);
        sum += bags;
        squares += bags * bags;
      }
      double mean = sum / unit.needs().length;
      means[node] += mean;
      variances[node] += Math.max(0, squares / unit.needs().length - mean * mean);
    }
  }

  /** The least number of bags that suffices with a chance of {@code confidence}. */
  int enough(double confidence) {
    int low = -1;
    int high = 1 + (int) Math.ceil(means[NODES - 1] + 9 * Math.sqrt(variances[NODES - 1]));
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (chance(middle) >= confidence) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /** Part of the variance that the lot brings; 0 where nothing is unsure. */
  double lotShare() {
    double mean = average(means);
    double within = average(variances);
    double squares = 0;
    double weights = 0;
    for (int node = 0; node < NODES; node++) {
      Stopped.ifInterrupted();
      double weight = weight(STEP * node - REACH);
      squares += weight * (means[node] - mean) * (means[node] - mean);
      weights += weight;
    }
    double between = squares / weights;
    return between + within > 0 ? between / (between + within) : 0;
  }

  private static double average(double[] values) {
    double sum = 0;
    double weights = 0;
    for (int node = 0; node < NODES; node++) {
      Stopped.ifInterrupted();
      double weight = weight(STEP * node - REACH);
      sum += weight * values[node];
      weights += weight;
    }
    return sum / weights;
  }

  /** The chance that {@code bags} suffice. */
  private double chance(int bags) {
    double sum = 0;
    double weights = 0;
    for (int i = 0; i <= (NODES - 1) * FINER; i++) {
      double place = (double) i / FINER;
      double weight = weight(STEP * place - REACH);
      sum += weight * chance(bags, at(means, place), at(variances, place));
      weights += weight;
    }
    return sum / weights;
  }

  private static double chance(int bags, double mean, double variance) {
    double above = bags + 0.5 - mean;
    if (!(variance > 1e-12)) {
      return above >= 0 ? 1 : 0;
    }
    return 0.5 * Erf.erfc(-above / Math.sqrt(2 * variance));
  }

  private static double at(double[] values, double place) {
    int node = Math.min(NODES - 2, (int) place);
    double share = place - node;
    return (1 - share) * values[node] + share * values[node + 1];
  }

  /** The normal density, not normed. */
  private static double weight(double lot) {
    return Math.exp(-lot * lot / 2);
  }
}
