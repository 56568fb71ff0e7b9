package dev.fillplane.heat;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;

/** What of the air speaks against a pour, in words. */
final class AirWarnings {

  private final AirReport report;
  private final Findings findings;

  AirWarnings(AirReport report, Findings findings) {
    this.report = report;
    this.findings = findings;
  }

  /** A base that may sweat; {@code place} of its temperature. */
  void base(double temperature, Place place) {
    if (report.sweats()) {
      findings.warning(
          "floor-near-dew-point",
          place,
          "temperature",
          Amount.of(temperature, Dimension.TEMPERATURE),
          "dewPoint",
          Amount.of(report.dewPoint(), Dimension.TEMPERATURE),
          "least",
          Amount.of(report.leastSubstrate(), Dimension.TEMPERATURE));
    }
  }

  /** A surface that dries too fast, fast, or perhaps fast. */
  void surface(Place place) {
    if (report.evaporation() > AirMoisture.STOP) {
      warn("surface-dries-too-fast", place, AirMoisture.STOP);
    } else if (report.evaporation() > AirMoisture.CAUTION) {
      warn("surface-dries-fast", place, AirMoisture.CAUTION);
    } else if (report.evaporationBand().to() > AirMoisture.CAUTION) {
      warn("surface-may-dry-fast", place, AirMoisture.CAUTION);
    }
  }

  private void warn(String code, Place place, double limit) {
    findings.warning(
        code,
        place,
        "rate",
        Amount.of(report.evaporation(), Dimension.EVAPORATION),
        "limit",
        Amount.of(limit, Dimension.EVAPORATION));
  }
}
