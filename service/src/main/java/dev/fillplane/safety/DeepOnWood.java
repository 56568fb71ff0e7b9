package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** More than about an inch of fill on wood. */
final class DeepOnWood implements Rule {

  private static final double MOST = 0.025;

  private static final String BASIS =
      "about 25 mm (1 in) of fill on wood: judgement, no source. A licensed engineer decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    PouredRooms wood = job.all().onWood();
    return wood.maximumDepth() > MOST
        ? Optional.of(
            Note.of("engineer-deep-on-wood", Severity.WARNING, BASIS)
                .valued(Amount.of(wood.maximumDepth(), Dimension.HEIGHT))
                .limited(Amount.of(MOST, Dimension.HEIGHT))
                .in(wood))
        : Optional.empty();
  }
}
