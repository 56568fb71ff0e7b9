package dev.fillplane.supply;

import java.util.SplittableRandom;

/**
 * Errors of many placings of a pour, drawn once: by how much each lies higher than planned, and how
 * many times the usual yield it takes for waste and for its lot. Placings come in antithetic pairs;
 * those of one realisation of the floor stand together.
 *
 * @param higher m
 * @param factor on the volume that is placed
 */
record PlacingErrors(double[] higher, double[] factor) {

  /** Placings in all, at least; enough for a steady tenth percentile. */
  private static final int DRAWS = 4096;

  /** The errors for so many realisations of the floor, as many for each. */
  static PlacingErrors draw(int realisations, long seed) {
    return draw(realisations, seed, 1);
  }

  /** The same where all is poured from one usual lot. */
  static PlacingErrors inUsualLot(int realisations, long seed) {
    return draw(realisations, seed, 0);
  }

  private static PlacingErrors draw(int realisations, long seed, double lotError) {
    int some = Math.max(1, realisations);
    int pairs = (DRAWS / 2 + some - 1) / some;
    int count = 2 * pairs * some;
    SplittableRandom random = new SplittableRandom(seed);
    PlacingErrors errors = new PlacingErrors(new double[count], new double[count]);
    for (int i = 0; i < count; i += 2) {
      double height = random.nextGaussian();
      double lot = lotError * random.nextGaussian();
      double waste = random.nextGaussian();
      errors.set(i, height, lot, waste);
      errors.set(i + 1, -height, -lot, -waste);
    }
    return errors;
  }

  /** By standard normal errors of height, of the lot and of waste. */
  private void set(int i, double height, double lot, double waste) {
    higher[i] = BagOdds.higher(height);
    factor[i] = BagOdds.factor(lot, waste);
  }

  /** How many there are for each of so many realisations. */
  int each(int realisations) {
    return higher.length / realisations;
  }
}
