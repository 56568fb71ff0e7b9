package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.util.Locale;
import java.util.Optional;

/**
 * Quartz dust of grinding: the air that a shroud has to draw, here for a wheel of 5 in held in the
 * hands, and a respirator where one person takes long at the rate of the request.
 */
final class GrindingDust implements Rule {

  private static final double WHEEL = Dimension.HEIGHT.unit(UnitSystem.US).toSi(5);

  private static final String BASIS =
      "; the area an hour is that of the request, else 8 m2 for one person: common practice, no"
          + " source. ";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.grinds()) {
      return Optional.empty();
    }
    DustControls controls = DustControls.handGrinding(WHEEL, job.grindHours(), true);
    Note note =
        controls.respirator().isEmpty()
            ? note("silica-at-grinding", job, controls)
            : note("silica-at-long-grinding", job, controls)
                .with("apf", controls.respirator().get().apf());
    return Optional.of(note.valued(Amount.of(controls.airflow().orElseThrow(), Dimension.AIRFLOW)));
  }

  private static Note note(String code, SafetyInput job, DustControls controls) {
    return Note.of(
        code,
        job.isUnventilated() ? Severity.DANGER : Severity.WARNING,
        controls.basis() + BASIS + SilicaLimits.text(job.premises().jurisdiction()),
        "area",
        Amount.of(job.grindArea(), Dimension.AREA),
        "wheel",
        Amount.of(WHEEL, Dimension.HEIGHT),
        "filter",
        DustControls.percent(controls.filterEfficiency().orElseThrow()),
        "hours",
        String.format(Locale.ROOT, "%.1f", job.grindHours()));
  }
}
