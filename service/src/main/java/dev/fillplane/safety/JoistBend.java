package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.supply.JoistBow;
import dev.fillplane.supply.JoistSag;
import java.util.Optional;

/**
 * How far the wet pour bends joists that just meet L/360 under 40 psf; the bags that fill the bow
 * are in the order.
 *
 * @see JoistSag
 */
final class JoistBend implements Rule {

  private static final String BASIS =
      "IRC tables R301.5 (40 psf of live load) and R301.7 (floors L/360); joists that just meet them"
          + " are an assumption. A licensed engineer decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    PouredRooms wood = job.all().onWood();
    if (wood.isEmpty() || !job.mixes() || job.premises().joistSpan().isEmpty()) {
      return Optional.empty();
    }
    double span = job.premises().joistSpan().getAsDouble();
    double load = wood.load().si();
    return Optional.of(
        Note.of(
                "joist-sag",
                load > JoistSag.LIVE_LOAD ? Severity.DANGER : Severity.CAUTION,
                BASIS,
                "span",
                Amount.of(span, Dimension.PLAN),
                "bags",
                job.bow().map(JoistBow::bags).orElse(0))
            .valued(Amount.of(JoistSag.middle(span, load), Dimension.HEIGHT))
            .limited(Amount.of(JoistSag.allowed(span), Dimension.HEIGHT))
            .in(wood));
  }
}
