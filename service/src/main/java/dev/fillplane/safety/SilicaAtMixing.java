package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** Quartz dust where bags are opened and powder is mixed; graver where no air carries it off. */
final class SilicaAtMixing implements Rule {

  private static final String BASIS =
      ". Opening bags and mixing powder are not in table 1 of 29 CFR 1926.1153: the employer assesses"
          + " the exposure";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.mixes()) {
      return Optional.empty();
    }
    return Optional.of(bare(job).valued(Amount.of(job.powder(), Dimension.MASS)));
  }

  private static Note bare(SafetyInput job) {
    String basis = SilicaLimits.text(job.premises().jurisdiction()) + BASIS;
    Optional<Boolean> ventilated = job.conditions().ventilated();
    if (ventilated.isEmpty()) {
      return Note.of("silica-at-mixing-air-unknown", Severity.WARNING, basis, "bags", job.bags());
    }
    return ventilated.get()
        ? Note.of("silica-at-mixing", Severity.WARNING, basis, "bags", job.bags())
        : Note.of("silica-at-mixing-still-air", Severity.DANGER, basis, "bags", job.bags());
  }
}
