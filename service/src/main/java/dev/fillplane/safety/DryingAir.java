package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** Air that takes the water out of a thin pour before it has set. */
final class DryingAir implements Rule {

  private static final String BASIS =
      "Uno, ACI Materials Journal 95-M34 (1998), good to about 40 %; stop at 0.5 kg/m2/h: common"
          + " practice, no source";

  @Override
  public Optional<Note> note(SafetyInput job) {
    return job.air()
        .filter(air -> job.mixes() && air.evaporation() > air.limit().stop())
        .map(
            air ->
                Note.of("do-not-pour-in-drying-air", Severity.NOTICE, BASIS)
                    .valued(Amount.of(air.evaporation(), Dimension.EVAPORATION))
                    .limited(Amount.of(air.limit().stop(), Dimension.EVAPORATION)));
  }
}
