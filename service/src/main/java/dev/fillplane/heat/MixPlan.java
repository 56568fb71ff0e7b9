package dev.fillplane.heat;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * The fresh mix on a given day: its temperature with the heat of mixing, its times on this floor,
 * its water, and the water temperature that brings it to the sheet's.
 *
 * @see MixHeat
 * @see WorkingTime
 */
public final class MixPlan {

  private static final double WATER_DENSITY = 1000;

  private final DataSheet sheet;
  private final Site conditions;
  private final Place place;
  private final Findings findings;

  private MixPlan(DataSheet sheet, Site conditions, Place place, Findings findings) {
    this.sheet = sheet;
    this.conditions = conditions;
    this.place = place;
    this.findings = findings;
  }

  /**
   * Plans one mix.
   *
   * @param meanDepth of the pour; a negative one counts as none
   * @param bagsPerBatch at least 1
   * @param place of the conditions in the request
   * @param findings receives warnings only
   */
  public static Mix of(
      DataSheet sheet,
      Site conditions,
      double meanDepth,
      int bagsPerBatch,
      Place place,
      Findings findings) {
    MixPlan plan = new MixPlan(sheet, conditions, place, findings);
    return plan.make(Math.max(0, meanDepth), bagsPerBatch);
  }

  private Mix make(double depth, int bags) {
    double water = bags * sheet.waterPerBag();
    MixHeat heat =
        MixHeat.of(
            new Portion(bags * sheet.bagMass(), conditions.powder()),
            new Portion(WATER_DENSITY * water, conditions.water()));
    double mix = heat.mixTemperature() + conditions.mixingHeat();
    warn(mix);
    WorkingTime times = WorkingTime.of(sheet);
    return new Mix(
        mix,
        times.workingTime(mix, conditions.floor(), depth),
        times.healingTime(mix, conditions.floor(), depth),
        water,
        needed(heat));
  }

  private void warn(double mix) {
    SiteWarnings warnings = new SiteWarnings(sheet, findings);
    warnings.water(conditions.water(), place.at("water"));
    warnings.outside("air-outside-sheet", conditions.air(), place.at("air"));
    warnings.outside("floor-outside-sheet", conditions.floor(), place.at("floor"));
    warnings.outside("mix-outside-sheet", mix, place);
    warnings.estimated(farther(mix, conditions.floor()), place);
    AirReport.of(conditions, mix).ifPresent(this::warnOfTheAir);
  }

  /** The one that lies farther from the temperature of the sheet's time. */
  private double farther(double mix, double floor) {
    double at = sheet.workingTimeAt();
    return Math.abs(floor - at) > Math.abs(mix - at) ? floor : mix;
  }

  private void warnOfTheAir(AirReport report) {
    AirWarnings warnings = new AirWarnings(report, findings);
    warnings.base(conditions.floor(), place.at("floor"));
    warnings.surface(place);
  }

  private Needed needed(MixHeat heat) {
    double needed = heat.neededWater(sheet.workingTimeAt() - conditions.mixingHeat());
    if (!WaterBarrel.allows(needed)) {
      findings.warning(
          "no-water-helps",
          place.at("water"),
          "wanted",
          Amount.of(sheet.workingTimeAt(), Dimension.TEMPERATURE));
      return new Needed(OptionalDouble.empty(), OptionalDouble.empty());
    }
    double ice = WaterBarrel.ice(heat.water().mass(), conditions.water(), needed);
    return new Needed(
        OptionalDouble.of(needed), ice > 0 ? OptionalDouble.of(ice) : OptionalDouble.empty());
  }
}
