package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** A base so near the dew point that it may sweat under primer or pour. */
final class DampBase implements Rule {

  private static final double MARGIN = 3;

  /** Room for the last digits after a conversion of units. */
  private static final double ROUNDING = 1e-9;

  private static final String BASIS =
      "base at least 3 K (5.4 F) above the dew point: practice after ISO 8502-4";

  @Override
  public Optional<Note> note(SafetyInput job) {
    return job.air()
        .filter(air -> job.mixes() && air.margin() < MARGIN - ROUNDING)
        .map(
            air ->
                Note.of(
                        "do-not-pour-near-dew-point",
                        Severity.NOTICE,
                        BASIS,
                        "dewPoint",
                        Amount.of(air.dewPoint(), Dimension.TEMPERATURE))
                    .valued(Amount.of(job.conditions().floor(), Dimension.TEMPERATURE))
                    .limited(Amount.of(air.leastSubstrate(), Dimension.TEMPERATURE)));
  }
}
