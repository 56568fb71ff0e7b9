package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** Heavy work in hot air. */
final class HeatStress implements Rule {

  private static final double HOT = 30;
  private static final String BASIS = "common practice, no source; local rules for heat decide";

  @Override
  public Optional<Note> note(SafetyInput job) {
    double air = job.conditions().air();
    if (air < HOT) {
      return Optional.empty();
    }
    return Optional.of(
        Note.of("heat-stress", Severity.WARNING, BASIS)
            .valued(Amount.of(air, Dimension.TEMPERATURE))
            .limited(Amount.of(HOT, Dimension.TEMPERATURE)));
  }
}
