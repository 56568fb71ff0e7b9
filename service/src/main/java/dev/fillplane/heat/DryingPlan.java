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
    double coldest = Math.max(0, Math.min(site.air(), site.floor()));
    double rate = Arrhenius.rate(coldest, sheet.workingTimeAt(), sheet.activationEnergy());
    double longer = Math.max(1, 1 / rate);
    return new Drying(
        longer * sheet.walkOn(),
        longer * (sheet.walkOn() + PRIMER_DRYING),
        longer * sheet.coveringAfter(),
        slab.tests(),
        slab,
        AirReport.of(site, mix),
        Curing.remarks());
  }
}
