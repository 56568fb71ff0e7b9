package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.supply.JoistSag;
import java.util.Optional;

/** Tile on joists, which wants L/360 under the whole load, the pour included. */
final class TileOnJoists implements Rule {

  private static final String BASIS =
      "L/360 under total load: a tile council as quoted by a joist maker (2003); joists that just meet"
          + " L/360 under 40 psf of live load (IRC tables R301.5, R301.7) are an assumption. A"
          + " licensed engineer decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    PouredRooms wood = job.all().onWood();
    if (!job.tiled() || wood.isEmpty() || job.premises().joistSpan().isEmpty()) {
      return Optional.empty();
    }
    double span = job.premises().joistSpan().getAsDouble();
    double load = JoistSag.LIVE_LOAD + wood.load().si();
    return Optional.of(
        Note.of("engineer-tile", Severity.WARNING, BASIS, "span", Amount.of(span, Dimension.PLAN))
            .valued(Amount.of(JoistSag.middle(span, load), Dimension.HEIGHT))
            .limited(Amount.of(JoistSag.allowed(span), Dimension.HEIGHT))
            .in(wood));
  }
}
