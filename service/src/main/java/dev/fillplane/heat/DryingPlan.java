package dev.fillplane.heat;

import dev.fillplane.material.DataSheet;

/**
 * When the floor may be used, and how many moisture tests its slab needs beforehand.
 *
 * <p>The sheet's times grow by {@link Arrhenius} with the colder of air and floor, and are never
 * shorter than the sheet. Below 0 C nothing dries; the time of 0 C is given. An estimate: the sheet
 * and a test decide.
 */
public final class DryingPlan {

  /** Drying of primer between lifts, of 1 to 4 h (common practice, no source). */
  public static final double PRIMER_DRYING = 2 * 3600.0;

  /** First tests of ASTM F2170 section 10.1, for the first 1000 ft2. */
  private static final int FIRST_TESTS = 3;

  private static final double TEST_AREA = 1000 * 0.3048 * 0.3048;

  /** Room for the last digits after a conversion of units. */
  private static final double ROUNDING = 1e-9;

  private DryingPlan() {}

  /**
   * Plans the waiting.
   *
   * @param area floor of the unit; not negative
   * @param wood whether all of it is wood, which is not tested this way
   */
  public static Drying of(DataSheet sheet, Site conditions, double area, boolean wood) {
    double coldest = Math.max(0, Math.min(conditions.air(), conditions.floor()));
    double longer =
        Math.max(1, 1 / Arrhenius.rate(coldest, sheet.workingTimeAt(), sheet.activationEnergy()));
    return new Drying(
        longer * sheet.walkOn(),
        longer * (sheet.walkOn() + PRIMER_DRYING),
        longer * sheet.coveringAfter(),
        wood ? 0 : moistureTests(area));
  }

  /** 3 for the first 1000 ft2 and 1 for each further 1000 ft2 begun (ASTM F2170 section 10.1). */
  public static int moistureTests(double area) {
    if (!(area > 0)) {
      return 0;
    }
    double further = Math.max(0, area / TEST_AREA - 1);
    return FIRST_TESTS + (int) Math.ceil(further - ROUNDING);
  }
}
