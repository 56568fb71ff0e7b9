package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** A floor that hangs by more than L/240 before anything is poured. */
final class SaggingFloor implements Rule {

  private static final double SPANS = 240;

  private static final String BASIS =
      "sag over L/240: judgement, no source; IRC table R301.7 allows L/360 under live load. A"
          + " licensed engineer decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    Premises premises = job.premises();
    if (!job.mixes() || premises.sag().isEmpty() || premises.joistSpan().isEmpty()) {
      return Optional.empty();
    }
    double sag = premises.sag().getAsDouble();
    double span = premises.joistSpan().getAsDouble();
    return sag > span / SPANS
        ? Optional.of(
            Note.of("engineer-sag", Severity.DANGER, BASIS, "span", Amount.of(span, Dimension.PLAN))
                .valued(Amount.of(sag, Dimension.HEIGHT))
                .limited(Amount.of(span / SPANS, Dimension.HEIGHT)))
        : Optional.empty();
  }
}
