package dev.fillplane.safety;

import java.util.Optional;

/**
 * Asbestos in floorings, backings and adhesives, by country, year and kind of covering; where no
 * country is told the later of the US and the UK year is used.
 */
final class OldFlooring implements Rule {

  private static final int LAST_US_YEAR = 1980;
  private static final int FIRST_CLEAR_YEAR = 2000;
  private static final int FIRST_CLEAR_EU_YEAR = 2005;

  private static final String BASIS =
      "29 CFR 1926.1101(k): flooring installed no later than 1980 is treated as containing asbestos"
          + " and later flooring is not presumed free of it; UK practice: before 2000; EU directive"
          + " 1999/77/EC: banned from 2005 (from memory)";

  @Override
  public Optional<Note> note(SafetyInput job) {
    Optional<Jurisdiction> where = job.premises().jurisdiction();
    int clear = where.equals(Optional.of(Jurisdiction.EU)) ? FIRST_CLEAR_EU_YEAR : FIRST_CLEAR_YEAR;
    BuiltRooms old = BuiltRooms.in(job, year -> year < clear);
    if (old.isEmpty() || job.premises().isTested()) {
      return Optional.empty();
    }
    boolean presumed =
        old.year() <= LAST_US_YEAR
            || where.filter(told -> told != Jurisdiction.US).isPresent()
            || job.premises().hadResilient();
    return Optional.of(
        Note.of(
            "asbestos-suspect",
            job.grinds() || presumed ? Severity.DANGER : Severity.WARNING,
            BASIS,
            "rooms",
            old.names(),
            "year",
            old.year(),
            "presumed",
            LAST_US_YEAR,
            "clear",
            clear));
  }
}
