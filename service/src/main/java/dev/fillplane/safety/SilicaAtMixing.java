package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** Quartz dust where bags are opened and powder is mixed; graver where no air carries it off. */
final class SilicaAtMixing implements Rule {

  private static final String BASIS =
      "Respirable crystalline silica, mean of 8 h: US 29 CFR 1926.1153 50 ug/m3 (action level 25);"
          + " EU directive 2017/2398 and UK EH40 100 ug/m3. Opening bags and mixing powder are not"
          + " in table 1 of the US rule: the employer assesses the exposure";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.mixes()) {
      return Optional.empty();
    }
    return Optional.of(bare(job).valued(Amount.of(job.powder(), Dimension.MASS)));
  }

  private static Note bare(SafetyInput job) {
    Optional<Boolean> ventilated = job.conditions().ventilated();
    if (ventilated.isEmpty()) {
      return Note.of("silica-at-mixing-air-unknown", Severity.WARNING, BASIS, "bags", job.bags());
    }
    return ventilated.get()
        ? Note.of("silica-at-mixing", Severity.WARNING, BASIS, "bags", job.bags())
        : Note.of("silica-at-mixing-still-air", Severity.DANGER, BASIS, "bags", job.bags());
  }
}
