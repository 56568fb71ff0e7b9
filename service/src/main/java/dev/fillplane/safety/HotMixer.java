package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** The motor of a drill that mixes many batches in a row. */
final class HotMixer implements Rule {

  private static final int BATCHES_IN_A_ROW = 10;

  private static final String BASIS =
      "a rest after 10 batches in a row: common practice, no source; the manual of the drill decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    int mixers = Math.max(1, job.crew().mixers());
    int batches = (job.batches() + mixers - 1) / mixers;
    return job.mixesInBarrels() && batches > BATCHES_IN_A_ROW
        ? Optional.of(
            Note.of(
                    "hot-mixer",
                    Severity.CAUTION,
                    BASIS,
                    "batches",
                    batches,
                    "most",
                    BATCHES_IN_A_ROW)
                .valued(Amount.of(job.mixingTime(), Dimension.TIME)))
        : Optional.empty();
  }
}
