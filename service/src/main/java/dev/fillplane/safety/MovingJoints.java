package dev.fillplane.safety;

import dev.fillplane.room.FeatureKind;
import java.util.Optional;

/** Joints of the base that move, which no pour may bridge. */
final class MovingJoints implements Rule {

  private static final String BASIS = "common practice, no source";

  @Override
  public Optional<Note> note(SafetyInput job) {
    int joints = job.count(FeatureKind.MOVING_JOINT);
    return job.mixes() && joints > 0
        ? Optional.of(Note.of("moving-joints", Severity.NOTICE, BASIS, "count", joints))
        : Optional.empty();
  }
}
