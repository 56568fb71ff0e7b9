package dev.fillplane.supply;

import dev.fillplane.material.DataSheet;

/**
 * How many bags a pour takes, with odds: the survey's realisations of the volume, widened by what
 * the survey cannot know.
 *
 * <p>Each realisation is placed several times with errors of its own: height of placing over the
 * wet area, what the texture swallows, yield, which is common to all bags of a lot, and waste.
 * Draws come in antithetic pairs and in a fixed order from the seed. Residue of the barrels and
 * site waste are allowances on top. The constants are common practice, no source.
 *
 * @see BagDrivers
 */
public final class BagOdds {

  /** Mean height by which a pour is placed too high. */
  public static final double PLACING_BIAS = 0.0005;

  /** Standard deviation of the height at which a whole pour is placed. */
  public static final double PLACING_ERROR = 0.0005;

  /** Depth that the texture of the base swallows (ground or blasted concrete). */
  public static final double TEXTURE_DEPTH = 0.0004;

  /** Standard deviation of that depth over a whole pour, half of it: our choice. */
  public static final double TEXTURE_ERROR = 0.0002;

  /** Standard deviation of the yield of a lot, as a share. */
  public static final double YIELD_ERROR = 0.03;

  /** Share of a mix that stays in the barrel. */
  public static final double BARREL_RESIDUE = 0.015;

  /** Spilt, left over or set too early, as a share of what is poured. */
  public static final double SITE_WASTE = 0.03;

  /**
   * Standard deviation of waste and residue together, as a share: 3 to 5 % and 1 to 2 %, each
   * evenly spread.
   */
  public static final double WASTE_ERROR = 0.0065;

  /** Least order as a multiple of the likely bags. */
  public static final double LEAST_RESERVE = 1.05;

  /** A lot never yields less than this share of the sheet, however odd the draw. */
  private static final double LEAST_YIELD = 0.8;

  /** Keeps the last digits of a sum from costing a bag. */
  private static final double ROUNDING = 1e-9;

  /** Placing and texture both raise the whole wet area, so that one error stands for both. */
  private static final double HEIGHT_ERROR = Math.hypot(PLACING_ERROR, TEXTURE_ERROR);

  private BagOdds() {}

  /**
   * Counts bags.
   *
   * @param volumes volume of the pour in each realisation, not negative; at least one
   * @param wetAreas the area that is poured in each
   * @param confidence chance that the order suffices, between 0 and 1
   * @throws IllegalArgumentException if the arrays are empty or differ in length, or the confidence
   *     is not between 0 and 1
   */
  public static Bags of(
      double[] volumes, double[] wetAreas, DataSheet sheet, double confidence, long seed) {
    return of(volumes, wetAreas, sheet, confidence, PlacingErrors.draw(volumes.length, seed));
  }

  /** The same with errors that were drawn before for as many realisations. */
  static Bags of(
      double[] volumes,
      double[] wetAreas,
      DataSheet sheet,
      double confidence,
      PlacingErrors errors) {
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException("no confidence: " + confidence);
    }
    return bags(needs(volumes, wetAreas, sheet, errors), confidence);
  }

  /** The likely bags of {@link #of} alone. */
  public static int likely(double[] volumes, double[] wetAreas, DataSheet sheet, long seed) {
    PlacingErrors errors = PlacingErrors.draw(volumes.length, seed);
    return whole(new Quantiles(needs(volumes, wetAreas, sheet, errors)).at(0.5));
  }

  /** The likely bags for a part of the pour, rounded up; 0 where nothing is poured. */
  public static int likely(double volume, double wetArea, DataSheet sheet) {
    return whole(expected(volume, wetArea, sheet));
  }

  /** The same, not rounded. */
  public static double expected(double volume, double wetArea, DataSheet sheet) {
    double placed = Math.max(0, volume + wetArea * higher(0));
    return volume > 0 ? placed * factor(0, 0) / sheet.yieldPerBag() : 0;
  }

  /**
   * What a bag adds to the planned volume of a pour, once texture, placing, residue and waste have
   * had their part; the yield of the sheet where nothing is poured.
   */
  public static double planned(double volume, double wetArea, DataSheet sheet) {
    double bags = expected(volume, wetArea, sheet);
    return bags > 0 ? volume / bags : sheet.yieldPerBag();
  }

  /**
   * The same without the yield of the lot, which is common to all pours from it: evenly likely
   * numbers of bags, not rounded, in rising order. Divided by {@link #lotYield} they are the bags
   * from that lot.
   *
   * @param count how many numbers
   */
  public static double[] inUsualLot(
      double[] volumes, double[] wetAreas, DataSheet sheet, int count, long seed) {
    PlacingErrors errors = PlacingErrors.inUsualLot(volumes.length, seed);
    Quantiles needs = new Quantiles(needs(volumes, wetAreas, sheet, errors));
    double[] even = new double[count];
    for (int i = 0; i < count; i++) {
      even[i] = needs.at((i + 0.5) / count);
    }
    return even;
  }

  /**
   * What a bag of a lot yields, as a share of the sheet, by the standard normal error of the lot.
   */
  public static double lotYield(double lot) {
    return Math.max(LEAST_YIELD, 1 - YIELD_ERROR * lot);
  }

  /** By how much a pour lies higher than planned, by the standard normal error of its height. */
  static double higher(double height) {
    return PLACING_BIAS + TEXTURE_DEPTH + HEIGHT_ERROR * height;
  }

  /**
   * How many times the sheet's yield the volume that is placed takes, by the standard normal errors
   * of the lot and of waste.
   */
  static double factor(double lot, double waste) {
    return (1 + Math.max(0, SITE_WASTE + WASTE_ERROR * waste))
        / (lotYield(lot) * (1 - BARREL_RESIDUE));
  }

  /** Bags, not rounded, of each placing of each realisation. */
  private static double[] needs(
      double[] volumes, double[] wetAreas, DataSheet sheet, PlacingErrors errors) {
    if (volumes.length == 0 || volumes.length != wetAreas.length) {
      throw new IllegalArgumentException(
          volumes.length + " volumes and " + wetAreas.length + " areas");
    }
    double[] needs = new double[errors.higher().length];
    int each = errors.each(volumes.length);
    double bagsPerVolume = 1 / sheet.yieldPerBag();
    for (int i = 0; i < volumes.length; i++) {
      if (volumes[i] > 0) {
        fill(volumes[i], wetAreas[i], bagsPerVolume, errors, i * each, (i + 1) * each, needs);
      }
    }
    return needs;
  }

  private static void fill(
      double volume,
      double wetArea,
      double bagsPerVolume,
      PlacingErrors errors,
      int from,
      int to,
      double[] needs) {
    double[] higher = errors.higher();
    double[] factor = errors.factor();
    for (int i = from; i < to; i++) {
      needs[i] = Math.max(0, volume + wetArea * higher[i]) * factor[i] * bagsPerVolume;
    }
  }

  private static Bags bags(double[] needs, double confidence) {
    Quantiles quantiles = new Quantiles(needs);
    int likely = whole(quantiles.at(0.5));
    int sure = whole(quantiles.at(confidence));
    int order = Math.max(sure, whole(LEAST_RESERVE * likely));
    return new Bags(
        likely,
        whole(quantiles.at(0.1)),
        likely,
        whole(quantiles.at(0.9)),
        order,
        leftOver(needs, order));
  }

  private static double leftOver(double[] needs, int order) {
    double sum = 0;
    for (int i = 0; i < needs.length; i += 2) {
      sum += Math.max(0, order - needs[i]) + Math.max(0, order - needs[i + 1]);
    }
    return sum / needs.length;
  }

  /** Bags that must be opened for so many. */
  public static int whole(double bags) {
    return (int) Math.ceil(bags - ROUNDING);
  }
}
