package dev.fillplane.material;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * Washed, dry aggregate that a sheet allows in a deep pour, to save bags. Whatever is not told has
 * a usual value (common practice, no source), which never contradicts one that is told.
 *
 * @param shareFrom least aggregate, as a share of the mass of the bag; 0.25
 * @param shareTo most aggregate, likewise; 0.5
 * @param minimumDepth least depth of a pour with aggregate; 25 mm
 * @param neatCap layer without aggregate on top of it; 3 mm
 * @param grainDensity density of the grains themselves; 2650 kg/m3, that of quartz
 */
public record Aggregate(
    Double shareFrom,
    Double shareTo,
    @Measured(Dimension.HEIGHT) Double minimumDepth,
    @Measured(Dimension.HEIGHT) Double neatCap,
    @Measured(Dimension.DENSITY) Double grainDensity) {

  private static final double LEAST_SHARE = 0.25;
  private static final double MOST_SHARE = 0.5;
  private static final double DEPTH = 0.025;
  private static final double CAP = 0.003;
  private static final double QUARTZ = 2650;

  /**
   * Fills in what was left out.
   *
   * @throws IllegalArgumentException if a share is not between 0 and 1
   */
  public Aggregate {
    checkShare(shareFrom);
    checkShare(shareTo);
    double most = shareTo == null ? MOST_SHARE : shareTo;
    shareFrom = shareFrom == null ? Math.min(LEAST_SHARE, most) : shareFrom;
    shareTo = shareTo == null ? Math.max(most, shareFrom) : shareTo;
    double cap = neatCap == null ? 0 : neatCap;
    minimumDepth = minimumDepth == null ? Math.max(DEPTH, 2 * cap) : minimumDepth;
    neatCap = neatCap == null ? Math.min(CAP, minimumDepth / 2) : neatCap;
    grainDensity = grainDensity == null ? QUARTZ : grainDensity;
  }

  /** Allowed, with the usual values. */
  public static Aggregate usual() {
    return new Aggregate(null, null, null, null, null);
  }

  private static void checkShare(Double share) {
    if (share != null && !(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("no share of a bag: " + share);
    }
  }
}
