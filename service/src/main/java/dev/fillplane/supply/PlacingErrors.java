package dev.fillplane.supply;

import java.util.SplittableRandom;

/**
 * Standard normal errors of many placings of a pour, drawn once; each also stands for its mirror
 * image.
 *
 * @param height of the height of placing and of what the texture swallows
 * @param lot of the yield of the lot
 * @param waste of waste and residue
 */
record PlacingErrors(double[] height, double[] lot, double[] waste) {

  /** Placings in all, at least; enough for a steady tenth percentile. */
  private static final int DRAWS = 4096;

  /** The errors for so many realisations of the floor, as many for each. */
  static PlacingErrors draw(int realisations, long seed) {
    int count = (DRAWS / 2 + realisations - 1) / realisations * realisations;
    SplittableRandom random = new SplittableRandom(seed);
    PlacingErrors errors =
        new PlacingErrors(new double[count], new double[count], new double[count]);
    for (int i = 0; i < count; i++) {
      errors.height[i] = random.nextGaussian();
      errors.lot[i] = random.nextGaussian();
      errors.waste[i] = random.nextGaussian();
    }
    return errors;
  }

  /** The same where all is poured from one usual lot. */
  PlacingErrors inUsualLot() {
    return new PlacingErrors(height, new double[lot.length], waste);
  }

  /** How many there are, without the mirror images. */
  int count() {
    return height.length;
  }
}
