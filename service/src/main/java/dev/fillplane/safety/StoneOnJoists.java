package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.supply.JoistSag;
import java.util.Optional;

/**
 * Stone on a floor that spans a void, which wants it twice as stiff as other floors are built:
 * L/720 up to 14 ft and 7/32 in beyond. At 14 ft the first is the larger, so the lower of both is
 * used throughout.
 */
final class StoneOnJoists implements Rule {

  private static final double SPANS = 720;
  private static final double MOST = 7 * 0.0254 / 32;

  private static final String BASIS =
      "L/720 up to 14 ft and 7/32 in beyond: a marble institute as quoted by a joist maker (2003); a"
          + " floor that just meets L/360 (IRC table R301.7) is an assumption. A licensed engineer"
          + " decides";

  /** How far a span may bend under stone. */
  static double allowed(double span) {
    return Math.min(span / SPANS, MOST);
  }

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.mixes() || !job.premises().hasStone() || !job.maySpan()) {
      return Optional.empty();
    }
    if (job.premises().joistSpan().isEmpty()) {
      return Optional.of(Note.of("engineer-stone-span-unknown", Severity.WARNING, BASIS));
    }
    double span = job.premises().joistSpan().getAsDouble();
    return Optional.of(
        Note.of("engineer-stone", Severity.WARNING, BASIS, "span", Amount.of(span, Dimension.PLAN))
            .valued(Amount.of(JoistSag.allowed(span), Dimension.HEIGHT))
            .limited(Amount.of(allowed(span), Dimension.HEIGHT)));
  }
}
