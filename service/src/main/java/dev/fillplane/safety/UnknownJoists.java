package dev.fillplane.safety;

import java.util.Optional;

/** A floor of wood of which nobody told what carries it. */
final class UnknownJoists implements Rule {

  private static final String BASIS =
      "common practice, no source: joists of unknown span and state are looked at before they are"
          + " loaded. A licensed engineer decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    PouredRooms wood = job.all().onWood();
    boolean told =
        job.premises().joistSpan().isPresent() || job.premises().deadLoadAllowance().isPresent();
    return told || wood.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Note.of("engineer-unknown-joists", Severity.WARNING, BASIS)
                .valued(wood.load())
                .in(wood));
  }
}
