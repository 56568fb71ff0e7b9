package dev.fillplane.safety;

import dev.fillplane.room.FeatureKind;
import java.util.Optional;

/** Joints of the base that move, which no pour may bridge. */
final class MovingJoints implements Rule {

  private static final String BASIS = "common practice, no source";

  @Override
  public Optional<Note> note(SafetyInput job) {
    long joints =
        job.features().stream()
            .filter(feature -> feature.kind() == FeatureKind.MOVING_JOINT)
            .count();
    return job.mixes() && joints > 0
        ? Optional.of(Note.of("moving-joints", Severity.NOTICE, BASIS, "count", (int) joints))
        : Optional.empty();
  }
}
