package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** A pour that floats on insulation breaks where it is thin. */
final class FloatingBase implements Rule {

  private static final double LEAST_DEPTH = 0.020;

  private static final String BASIS =
      "20 to 35 mm on insulation: common practice, no source; the data sheet decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.mixes() || !job.premises().base().contains(BaseKind.INSULATION)) {
      return Optional.empty();
    }
    boolean thin = job.meanDepth() < LEAST_DEPTH;
    return Optional.of(
        Note.of("base-on-insulation", thin ? Severity.WARNING : Severity.NOTICE, BASIS)
            .valued(Amount.of(job.meanDepth(), Dimension.HEIGHT))
            .limited(Amount.of(LEAST_DEPTH, Dimension.HEIGHT)));
  }
}
