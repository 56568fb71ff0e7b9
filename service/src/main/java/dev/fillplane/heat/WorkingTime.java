package dev.fillplane.heat;

import dev.fillplane.material.DataSheet;
import dev.fillplane.material.TemperatureRange;

/**
 * How long a mix works at the temperatures it meets, from the sheet's times at the sheet's
 * temperature.
 *
 * <p>Method: equivalent age ({@link Arrhenius}) in steps of 10 s until the sheet's time is used up.
 * In the barrel, for the mix time, the mix has its own temperature; on the slab a share of the
 * difference to the slab is left, by depth and minutes. An estimate.
 *
 * <p>Outside the sheet's temperature range nothing is extrapolated: the end of the range holds
 * ({@link MixPlan} warns). Cold is never credited with more than {@link #MOST_CREDIT} of the stated
 * time, of the longer one where the sheet states two. Depths in m, times in s, temperatures in C.
 */
public final class WorkingTime {

  /** Longest time as a multiple of the longest of the sheet's (common practice, no source). */
  public static final double MOST_CREDIT = 1.25;

  /** What the mixer adds to the mix, 0 to 4 K (common practice, no source). */
  public static final double MIXING_HEAT = 2;

  private static final double STEP = 10;

  private final DataSheet sheet;

  private WorkingTime(DataSheet sheet) {
    this.sheet = sheet;
  }

  /** By this sheet. */
  public static WorkingTime of(DataSheet sheet) {
    return new WorkingTime(sheet);
  }

  /** Working time of a mix that stays at one temperature. */
  public double workingTime(double mixTemperature) {
    return spend(sheet.workingTime(), mixTemperature, mixTemperature, 0);
  }

  /** Working time of a mix poured {@code depth} deep on a slab; {@code depth} not negative. */
  public double workingTime(double mixTemperature, double slabTemperature, double depth) {
    return spend(sheet.workingTime(), mixTemperature, slabTemperature, depth);
  }

  /** The same until a cut no longer closes. */
  public double healingTime(double mixTemperature, double slabTemperature, double depth) {
    return spend(sheet.healingTime(), mixTemperature, slabTemperature, depth);
  }

  private double spend(double stated, double mix, double slab, double depth) {
    double most = MOST_CREDIT * stated * sheet.longestWorkingTime() / sheet.workingTime();
    double age = 0;
    for (int step = 0; step * STEP < most; step++) {
      double start = step * STEP;
      double rate = rate(temperature(start + STEP / 2, mix, slab, depth));
      if (age + rate * STEP >= stated) {
        return Math.min(most, start + (stated - age) / rate);
      }
      age += rate * STEP;
    }
    return most;
  }

  private double temperature(double time, double mix, double slab, double depth) {
    double onSlab = Math.max(0, time - sheet.mixTime());
    return slab + SlabShare.left(depth, onSlab) * (mix - slab);
  }

  private double rate(double temperature) {
    TemperatureRange range = sheet.temperatureRange();
    double held = Math.max(range.from(), Math.min(range.to(), temperature));
    return Arrhenius.rate(held, sheet.workingTimeAt(), sheet.activationEnergy());
  }
}
