package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.util.Locale;
import java.util.Optional;

/**
 * Quartz dust of grinding: the air that a shroud has to draw, here for a wheel of 5 in held in the
 * hands, and a respirator where one person takes long.
 */
final class GrindingDust implements Rule {

  private static final double WHEEL = Dimension.HEIGHT.unit(UnitSystem.US).toSi(5);

  /** Area that one person grinds in an hour (common practice, no source). */
  private static final double AREA_PER_HOUR = 8;

  private static final String BASIS = "; 8 m2 an hour for one person: common practice, no source. ";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.grinds()) {
      return Optional.empty();
    }
    double hours = job.grindArea() / AREA_PER_HOUR;
    DustControls controls = DustControls.handGrinding(WHEEL, hours, true);
    String basis = controls.basis() + BASIS + SilicaLimits.text(job.premises().jurisdiction());
    Severity severity = job.isUnventilated() ? Severity.DANGER : Severity.WARNING;
    return Optional.of(
        note(job, controls, severity, basis, String.format(Locale.ROOT, "%.1f", hours))
            .valued(Amount.of(controls.airflow().orElseThrow(), Dimension.AIRFLOW)));
  }

  private static Note note(
      SafetyInput job, DustControls controls, Severity severity, String basis, String hours) {
    Amount area = Amount.of(job.grindArea(), Dimension.AREA);
    Amount wheel = Amount.of(WHEEL, Dimension.HEIGHT);
    if (controls.respirator().isEmpty()) {
      return Note.of(
          "silica-at-grinding", severity, basis, "area", area, "wheel", wheel, "hours", hours);
    }
    return Note.of(
        "silica-at-long-grinding",
        severity,
        basis,
        "area",
        area,
        "wheel",
        wheel,
        "hours",
        hours,
        "apf",
        controls.respirator().get().apf());
  }
}
