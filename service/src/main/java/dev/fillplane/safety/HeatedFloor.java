package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/**
 * Heating in the floor: off before the pour, covered deep enough, warmed up slowly, never drilled
 * into. Heating that is on at the pour is refused.
 */
final class HeatedFloor implements Rule {

  private static final double LEAST_COVER = 0.010;
  private static final double WARMING_A_DAY = 5;

  private static final String BASIS =
      "off 24 to 48 h before and 2 to 7 days after, then 5 K more a day, 10 mm over cables: common"
          + " practice, no source; the maker of the heating decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    boolean heated =
        job.premises().floorHeating().filter(told -> told != FloorHeating.NONE).isPresent();
    if (!job.mixes() || !heated) {
      return Optional.empty();
    }
    Amount least = job.all().poured().leastDepth();
    return Optional.of(
        Note.of(
                "heated-floor",
                least.si() < LEAST_COVER ? Severity.WARNING : Severity.CAUTION,
                BASIS,
                "before",
                "24 to 48",
                "after",
                "2 to 7",
                "step",
                Amount.of(WARMING_A_DAY, Dimension.TEMPERATURE_DIFFERENCE))
            .valued(least)
            .limited(Amount.of(LEAST_COVER, Dimension.HEIGHT)));
  }
}
