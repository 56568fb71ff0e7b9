package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** Where eyes can be rinsed: near the mixers, and near the floor where that is further away. */
final class EyeRinse implements Rule {

  private static final double FURTHEST = 55 * 0.3048;
  private static final int SECONDS = 10;

  /** 0.4 gal a minute, m3/s. */
  private static final double FLOW = 0.4 * 0.003785411784 / 60;

  private static final String BASIS =
      "29 CFR 1926.50(g): eye and body wash within the work area; 10 s or 55 ft away and 0.4 gal a"
          + " minute for 15 minutes: ANSI Z358.1 (from memory); 20 minutes in the EU template (from"
          + " memory)";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.mixesCement()) {
      return Optional.empty();
    }
    int minutes = WetMix.rinseMinutes(job.premises());
    boolean far = job.crew().carryDistance() > FURTHEST;
    return Optional.of(
        Note.of(
                far ? "eye-rinse-twice" : "eye-rinse",
                far ? Severity.WARNING : Severity.CAUTION,
                BASIS,
                "seconds",
                SECONDS,
                "minutes",
                minutes,
                "water",
                Amount.of(FLOW * 60 * minutes, Dimension.LIQUID))
            .valued(Amount.of(job.crew().carryDistance(), Dimension.PLAN))
            .limited(Amount.of(FURTHEST, Dimension.PLAN)));
  }
}
