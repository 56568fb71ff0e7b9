package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** Quartz dust of cleaning: before primer, after grinding, round the mixer. */
final class CleanUpDust implements Rule {

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.isWork()) {
      return Optional.empty();
    }
    DustControls controls = DustControls.cleanUp();
    return Optional.of(
        Note.of(
                "silica-at-clean-up",
                Severity.CAUTION,
                controls.basis(),
                "filter",
                DustControls.percent(controls.filterEfficiency().orElseThrow()))
            .valued(Amount.of(Math.max(job.pouredArea(), job.grindArea()), Dimension.AREA)));
  }
}
