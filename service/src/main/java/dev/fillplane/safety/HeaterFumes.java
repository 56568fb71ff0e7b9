package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/**
 * Carbon monoxide of heaters: of one without a flue, or where none is told and the air is so cold
 * that one will be fetched.
 */
final class HeaterFumes implements Rule {

  private static final double COLD = 10;

  private static final String BASIS =
      "29 CFR 1926.154 (heaters) and 1926.57 (ventilation); carbon monoxide: OSHA 50 ppm, NIOSH 35"
          + " ppm in the mean of 8 h, never over 200 ppm; carbon dioxide 5000 ppm; below 10 C: common practice, no source";

  @Override
  public Optional<Note> note(SafetyInput job) {
    double air = job.conditions().air();
    if (job.premises().heater().isPresent()) {
      return job.premises().heater().get() == Heater.UNFLUED
          ? Optional.of(
              Note.of("heater-unflued", Severity.DANGER, BASIS)
                  .valued(Amount.of(air, Dimension.TEMPERATURE)))
          : Optional.empty();
    }
    if (air >= COLD) {
      return Optional.empty();
    }
    Severity severity = job.isUnventilated() ? Severity.DANGER : Severity.WARNING;
    return Optional.of(
        Note.of("heater-fumes", severity, BASIS)
            .valued(Amount.of(air, Dimension.TEMPERATURE))
            .limited(Amount.of(COLD, Dimension.TEMPERATURE)));
  }
}
