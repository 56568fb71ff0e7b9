package dev.fillplane.safety;

import java.util.Optional;

/** A floor that gives underfoot: nothing is poured on it before an engineer has seen it. */
final class BouncyFloor implements Rule {

  private static final String BASIS =
      "IRC table R301.7: floors L/360; bounce, cut, notched or rotten joists: common practice, no"
          + " source. A licensed engineer decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    return job.mixes() && job.premises().base().contains(BaseKind.BOUNCY)
        ? Optional.of(Note.of("base-bouncy", Severity.DANGER, BASIS).valued(job.load()))
        : Optional.empty();
  }
}
