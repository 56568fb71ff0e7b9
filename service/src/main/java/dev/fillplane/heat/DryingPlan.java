package dev.fillplane.heat;

import dev.fillplane.material.DataSheet;

/**
 * When the floor may be used.
 *
 * <p>The sheet's times grow by {@link Arrhenius} with the colder of air and floor, and are never
 * shorter than the sheet. Below 0 C nothing dries; the time of 0 C is given. An estimate: the sheet
 * and a test decide.
 */
public final class DryingPlan {

  /** Drying of primer between lifts, of 1 to 4 h (common practice, no source). */
  public static final double PRIMER_DRYING = 2 * 3600.0;

  private DryingPlan() {}

  /**
   * Plans the waiting.
   *
   * @param mix temperature of the fresh mix
   */
  public static Drying of(DataSheet sheet, Site site, double mix, SlabMoisture slab) {
    double longer = longer(sheet, site);
    return new Drying(
        longer * sheet.walkOn(),
        nextLift(sheet, site),
        longer * sheet.coveringAfter(),
        slab.tests(),
        slab,
        AirReport.of(site, mix),
        Curing.remarks());
  }

  /** Time until the next layer may follow: the one below may be walked on and is primed. */
  public static double nextLift(DataSheet sheet, Site site) {
    return longer(sheet, site) * (sheet.walkOn() + PRIMER_DRYING);
  }

  private static double longer(DataSheet sheet, Site site) {
    double coldest = Math.max(0, Math.min(site.air(), site.floor()));
    double rate = Arrhenius.rate(coldest, sheet.workingTimeAt(), sheet.activationEnergy());
    return Math.max(1, 1 / rate);
  }
}
