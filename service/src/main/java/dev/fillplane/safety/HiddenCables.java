package dev.fillplane.safety;

import dev.fillplane.room.FeatureKind;
import java.util.Optional;

/** Cables in the floor, once nobody sees them any more. */
final class HiddenCables implements Rule {

  private static final String BASIS = "common practice, no source; a licensed electrician decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    int cables = job.count(FeatureKind.CABLE);
    return cables > 0 && job.isWork()
        ? Optional.of(Note.of("hidden-cables", Severity.WARNING, BASIS, "count", cables))
        : Optional.empty();
  }
}
