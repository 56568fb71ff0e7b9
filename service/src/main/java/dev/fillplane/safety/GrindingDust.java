package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.util.Optional;

/** Quartz dust of grinding: the air that a shroud has to draw, here for a wheel of 5 in. */
final class GrindingDust implements Rule {

  private static final double WHEEL_INCHES = 5;

  private static final String BASIS =
      "29 CFR 1926.1153 table 1 (xi): shroud and collector with at least 25 cfm per inch of wheel,"
          + " filter 99 % or better; indoors over 4 h a respirator of APF 10";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.grinds()) {
      return Optional.empty();
    }
    double wheel = Dimension.HEIGHT.unit(UnitSystem.US).toSi(WHEEL_INCHES);
    return Optional.of(
        Note.of(
                "silica-at-grinding",
                job.isUnventilated() ? Severity.DANGER : Severity.WARNING,
                BASIS,
                "area",
                Amount.of(job.grindArea(), Dimension.AREA),
                "wheel",
                Amount.of(wheel, Dimension.HEIGHT))
            .valued(Amount.of(Shroud.airflow(wheel), Dimension.AIRFLOW)));
  }
}
