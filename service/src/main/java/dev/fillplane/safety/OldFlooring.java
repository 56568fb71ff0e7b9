package dev.fillplane.safety;

import dev.fillplane.room.OldCovering;
import dev.fillplane.room.Room;
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
          + " and later flooring is not presumed free of it; limit of 0.1 fibres/cm3 in the mean of"
          + " 8 h; UK practice: before 2000; EU directive 1999/77/EC: banned from 2005 (from memory)";

  @Override
  public Optional<Note> note(SafetyInput job) {
    Optional<Jurisdiction> where = job.premises().jurisdiction();
    boolean outsideTheEu = where.filter(told -> told != Jurisdiction.EU).isPresent();
    int clear = outsideTheEu ? FIRST_CLEAR_YEAR : FIRST_CLEAR_EU_YEAR;
    PouredRooms old = job.all().that(room -> builtBefore(clear, room));
    if (old.isEmpty() || job.premises().isTested()) {
      return Optional.empty();
    }
    boolean presumed =
        earliest(old) <= LAST_US_YEAR
            || where.filter(told -> told != Jurisdiction.US).isPresent()
            || had(OldCovering.RESILIENT, old);
    return Optional.of(
        Note.of(
                "asbestos-suspect",
                job.grinds() || presumed ? Severity.DANGER : Severity.WARNING,
                BASIS,
                "year",
                earliest(old),
                "presumed",
                LAST_US_YEAR,
                "clear",
                clear)
            .in(old));
  }

  static boolean builtBefore(int year, Room room) {
    return room.built().isPresent() && room.built().getAsInt() < year;
  }

  /** The earliest year of rooms whose years are told. */
  static int earliest(PouredRooms old) {
    return old.rooms().stream()
        .mapToInt(pour -> pour.room().built().orElseThrow())
        .min()
        .orElseThrow();
  }

  static boolean had(OldCovering covering, PouredRooms some) {
    return !some.that(room -> room.oldCovering().equals(Optional.of(covering))).isEmpty();
  }
}
