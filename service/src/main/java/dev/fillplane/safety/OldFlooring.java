package dev.fillplane.safety;

import java.util.Optional;

/** Asbestos in floorings, backings and adhesives; the later of the US and the UK year is used. */
final class OldFlooring implements Rule {

  private static final int LAST_US_YEAR = 1980;
  private static final int FIRST_CLEAR_UK_YEAR = 2000;

  private static final String BASIS =
      "29 CFR 1926.1101(k): flooring installed no later than 1980 is treated as containing asbestos"
          + " and later flooring is not presumed free of it; UK practice: before 2000";

  @Override
  public Optional<Note> note(SafetyInput job) {
    BuiltRooms old = BuiltRooms.in(job, year -> year < FIRST_CLEAR_UK_YEAR);
    if (old.isEmpty()) {
      return Optional.empty();
    }
    boolean grave = job.grinds() || old.year() <= LAST_US_YEAR;
    return Optional.of(
        Note.of(
            "asbestos-suspect",
            grave ? Severity.DANGER : Severity.WARNING,
            BASIS,
            "rooms",
            old.names(),
            "year",
            old.year()));
  }
}
