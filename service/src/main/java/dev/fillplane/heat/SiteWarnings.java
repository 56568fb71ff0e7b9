package dev.fillplane.heat;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.DataSheet;
import dev.fillplane.material.TemperatureRange;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;

/** Temperatures on site that the water or the sheet does not bear. */
final class SiteWarnings {

  /** So near to the sheet's temperature its time is hardly changed, by a quarter at most. */
  private static final double NEAR = 5;

  private final DataSheet sheet;
  private final Findings findings;

  SiteWarnings(DataSheet sheet, Findings findings) {
    this.sheet = sheet;
    this.findings = findings;
  }

  /** Water that is warm, or outside what any leveller takes. */
  void water(double temperature, Place place) {
    if (!WaterBarrel.allows(temperature)) {
      warn("water-outside-limits", place, temperature, WaterBarrel.COLDEST, WaterBarrel.WARMEST);
    } else if (temperature > WaterBarrel.WARM) {
      findings.warning(
          "water-too-warm",
          place,
          "temperature",
          amount(temperature),
          "limit",
          amount(WaterBarrel.WARM));
    }
  }

  /** Anything outside the temperatures of the sheet. */
  void outside(String code, double temperature, Place place) {
    TemperatureRange range = sheet.temperatureRange();
    if (temperature < range.from() || temperature > range.to()) {
      warn(code, place, temperature, range.from(), range.to());
    }
  }

  /**
   * A temperature so far from that of the sheet's time that the time rests on the activation
   * energy; a second time of the sheet speaks for itself.
   */
  void estimated(double temperature, Place place) {
    double at = sheet.workingTimeAt();
    if (sheet.secondTime().isEmpty() && Math.abs(temperature - at) > NEAR) {
      findings.warning(
          "time-is-an-estimate", place, "temperature", amount(temperature), "at", amount(at));
    }
  }

  private void warn(String code, Place place, double temperature, double from, double to) {
    findings.warning(
        code, place, "temperature", amount(temperature), "from", amount(from), "to", amount(to));
  }

  private static Amount amount(double temperature) {
    return Amount.of(temperature, Dimension.TEMPERATURE);
  }
}
