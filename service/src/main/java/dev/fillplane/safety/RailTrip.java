package dev.fillplane.safety;

import java.util.Optional;

/** Rails stand above the floor while people walk backwards. */
final class RailTrip implements Rule {

  private static final String BASIS = "common practice, no source";

  @Override
  public Optional<Note> note(SafetyInput job) {
    return job.rails() > 0
        ? Optional.of(Note.of("rail-trip", Severity.CAUTION, BASIS, "rails", job.rails()))
        : Optional.empty();
  }
}
