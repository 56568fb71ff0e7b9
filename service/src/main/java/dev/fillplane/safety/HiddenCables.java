package dev.fillplane.safety;

import dev.fillplane.room.FeatureKind;
import java.util.Optional;

/** Cables in the floor, once nobody sees them any more. */
final class HiddenCables implements Rule {

  private static final String BASIS = "common practice, no source; a licensed electrician decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    long cables =
        job.features().stream().filter(feature -> feature.kind() == FeatureKind.CABLE).count();
    return cables > 0 && job.isWork()
        ? Optional.of(Note.of("hidden-cables", Severity.WARNING, BASIS, "count", (int) cables))
        : Optional.empty();
  }
}
