package dev.fillplane.safety;

import dev.fillplane.material.Binder;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** Water that barrels and tools are washed with. */
final class WashWater implements Rule {

  /** For one barrel, m3. */
  private static final double LEAST = 0.020;

  private static final double MOST = 0.040;

  private static final String BASIS =
      "20 to 40 L a barrel, pH over 12 from cement, no drains: common practice, no source; local"
          + " rules for waste water decide";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.mixes()) {
      return Optional.empty();
    }
    int barrels = job.crew().barrels();
    boolean cement = job.sheet().binder() == Binder.CEMENT;
    Note note =
        Note.of(
                cement ? "wash-water-of-cement" : "wash-water-of-gypsum",
                cement ? Severity.CAUTION : Severity.NOTICE,
                BASIS,
                "barrels",
                barrels,
                "least",
                Amount.of(LEAST * barrels, Dimension.LIQUID))
            .valued(Amount.of(MOST * barrels, Dimension.LIQUID));
    return Optional.of(cement ? note.with("ph", WetMix.LEAST_PH) : note);
  }
}
