package dev.fillplane.safety;

import java.util.Optional;

/** Lead in paint and coatings of housing before 1978. */
final class OldPaint implements Rule {

  private static final int FIRST_CLEAR_YEAR = 1978;

  private static final String BASIS =
      "40 CFR 745 (housing built before 1978); 29 CFR 1926.62: lead in air 50 ug/m3, action level"
          + " 30, mean of 8 h";

  @Override
  public Optional<Note> note(SafetyInput job) {
    BuiltRooms old = BuiltRooms.in(job, year -> year < FIRST_CLEAR_YEAR);
    if (old.isEmpty() || job.premises().isTested()) {
      return Optional.empty();
    }
    return Optional.of(
        Note.of(
            "lead-paint-suspect",
            job.grinds() ? Severity.DANGER : Severity.WARNING,
            BASIS,
            "rooms",
            old.names(),
            "year",
            old.year()));
  }
}
