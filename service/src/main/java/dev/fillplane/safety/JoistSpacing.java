package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** Joists too far apart for tile or stone. */
final class JoistSpacing implements Rule {

  private static final double MOST = 16 * 0.0254;

  /** Room for the last digits after a conversion of units. */
  private static final double ROUNDING = 1e-9;

  private static final String BASIS =
      "joists 16 in apart or less under tile: a joist maker's technical note (2003). A licensed"
          + " engineer decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    boolean brittle = job.tiled() || job.premises().hasStone();
    double spacing = job.premises().joistSpacing().orElse(0);
    return job.mixes() && brittle && spacing > MOST + ROUNDING
        ? Optional.of(
            Note.of("engineer-joist-spacing", Severity.WARNING, BASIS)
                .valued(Amount.of(spacing, Dimension.HEIGHT))
                .limited(Amount.of(MOST, Dimension.HEIGHT)))
        : Optional.empty();
  }
}
