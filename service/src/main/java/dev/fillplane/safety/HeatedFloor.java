package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** Heating in the floor: off before the pour, covered deep enough, never drilled into. */
final class HeatedFloor implements Rule {

  private static final double LEAST_COVER = 0.010;

  private static final String BASIS =
      "off 24 to 48 h before and 2 to 7 days after, 10 mm over cables: common practice, no source";

  @Override
  public Optional<Note> note(SafetyInput job) {
    FloorHeating heating = job.premises().floorHeating().orElse(FloorHeating.NONE);
    if (!job.mixes() || heating == FloorHeating.NONE) {
      return Optional.empty();
    }
    Note note =
        heating == FloorHeating.ON
            ? Note.of("heated-floor-on", Severity.WARNING, BASIS)
            : Note.of("heated-floor", Severity.CAUTION, BASIS);
    return Optional.of(
        note.valued(Amount.of(job.meanDepth(), Dimension.HEIGHT))
            .limited(Amount.of(LEAST_COVER, Dimension.HEIGHT)));
  }
}
