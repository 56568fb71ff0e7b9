package dev.fillplane.material;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.OptionalDouble;

/** Whether the times of a sheet agree with one another and with its activation energy. */
final class TimeChecks {

  /** Times nearer in temperature tell nothing of their change with it (own choice). */
  private static final double LEAST_APART = 2;

  /** Energy told and that between two times may differ by this share: rounding of the sheet. */
  private static final double ENERGY_TOLERANCE = 0.1;

  /** Room for the last digits after a conversion of units. */
  private static final double ROUNDING = 1e-9;

  private final DataSheet sheet;
  private final Place place;
  private final Findings findings;

  TimeChecks(DataSheet sheet, Place place, Findings findings) {
    this.sheet = sheet;
    this.place = place;
    this.findings = findings;
  }

  void check(OptionalDouble energyTold) {
    checkHealing();
    sheet.secondTime().ifPresent(second -> checkSecond(second, energyTold));
  }

  private void checkHealing() {
    if (sheet.healingTime() > sheet.workingTime() * (1 + ROUNDING)) {
      findings.error(
          "healing-above-working",
          place.at("healingTime"),
          "healing",
          Amount.of(sheet.healingTime(), Dimension.TIME),
          "working",
          Amount.of(sheet.workingTime(), Dimension.TIME));
    }
  }

  private void checkSecond(StatedTime second, OptionalDouble energyTold) {
    StatedTime first = sheet.firstTime();
    if (Math.abs(first.workingTimeAt() - second.workingTimeAt()) < LEAST_APART - ROUNDING) {
      findings.error(
          "times-too-near",
          place.at("secondTime").at("workingTimeAt"),
          "apart",
          Amount.of(LEAST_APART, Dimension.TEMPERATURE_DIFFERENCE));
      return;
    }
    double energy = ActivationEnergy.between(first, second);
    if (!ActivationEnergy.allows(energy)) {
      contradicts(first, second);
    } else if (energyTold.isPresent()
        && Math.abs(energyTold.getAsDouble() / energy - 1) > ENERGY_TOLERANCE) {
      findings.error(
          "energy-contradicts-times",
          place.at("activationEnergy"),
          "told",
          Amount.of(energyTold.getAsDouble(), Dimension.MOLAR_ENERGY),
          "between",
          Amount.of(energy, Dimension.MOLAR_ENERGY));
    }
  }

  private void contradicts(StatedTime first, StatedTime second) {
    findings.error(
        "times-contradict",
        place.at("secondTime"),
        "first",
        Amount.of(first.workingTime(), Dimension.TIME),
        "firstAt",
        Amount.of(first.workingTimeAt(), Dimension.TEMPERATURE),
        "second",
        Amount.of(second.workingTime(), Dimension.TIME),
        "secondAt",
        Amount.of(second.workingTimeAt(), Dimension.TEMPERATURE));
  }
}
