package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** Primer, water and fresh mix underfoot. */
final class SlipperyFloor implements Rule {

  private static final String BASIS = "common practice, no source";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.mixes()) {
      return Optional.empty();
    }
    return Optional.of(
        Note.of("slippery-floor", Severity.CAUTION, BASIS)
            .valued(Amount.of(job.pouredArea(), Dimension.AREA)));
  }
}
