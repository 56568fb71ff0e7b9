package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** Vapour of a primer with solvents; grave beside flames and in still air. */
final class SolventPrimer implements Rule {

  private static final String BASIS =
      "common practice, no source; the safety data sheet of the primer decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.mixes() || !job.premises().solventPrimer().orElse(false)) {
      return Optional.empty();
    }
    boolean grave = job.premises().hasFlames() || job.isUnventilated();
    return Optional.of(
        Note.of("solvent-primer", grave ? Severity.DANGER : Severity.WARNING, BASIS)
            .valued(Amount.of(job.pouredArea(), Dimension.AREA)));
  }
}
