package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** Mixers and cords beside barrels of water. */
final class PowerNearWater implements Rule {

  private static final String BASIS =
      "29 CFR 1926.404(b)(1)(ii): ground-fault protection of 120 V site outlets (from memory); a circuit for"
          + " each mixer: common practice, no source";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.mixes()) {
      return Optional.empty();
    }
    double water = job.bags() * job.sheet().waterPerBag();
    return Optional.of(
        Note.of("power-near-water", Severity.WARNING, BASIS, "mixers", job.crew().mixers())
            .valued(Amount.of(water, Dimension.LIQUID)));
  }
}
