package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** A grinding wheel, which gets hot and stays so. */
final class HotWheel implements Rule {

  private static final String BASIS = "common practice, no source; the manual of the tool decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    return job.grinds()
        ? Optional.of(
            Note.of("hot-wheel", Severity.CAUTION, BASIS)
                .valued(Amount.of(3600 * job.grindHours(), Dimension.TIME)))
        : Optional.empty();
  }
}
