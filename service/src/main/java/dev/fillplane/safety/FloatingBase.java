package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.BaseKind;
import dev.fillplane.supply.Minimums;
import java.util.Optional;

/** A pour that floats on insulation; where it would be too thin a plan is refused. */
final class FloatingBase implements Rule {

  private static final double USUAL_MOST = 0.035;

  private static final String BASIS =
      "20 to 35 mm on insulation: common practice, no source; the data sheet decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    PouredRooms floating = job.all().on(BaseKind.INSULATION);
    return floating.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Note.of(
                    "base-on-insulation",
                    Severity.NOTICE,
                    BASIS,
                    "usual",
                    Amount.of(USUAL_MOST, Dimension.HEIGHT))
                .valued(floating.leastDepth())
                .limited(Amount.of(Minimums.FLOATING, Dimension.HEIGHT))
                .in(floating));
  }
}
