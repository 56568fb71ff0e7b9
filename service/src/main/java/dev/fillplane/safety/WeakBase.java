package dev.fillplane.safety;

import dev.fillplane.room.BaseKind;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.Optional;

/** A base weaker than the pour: dusting, hollow, lightweight, asphalt, gypsum. */
final class WeakBase implements Rule {

  private static final String BASIS =
      "pull-off strength of 1.0 to 1.5 MPa: common practice, no source; the data sheet decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    PouredRooms weak = job.all().poured().that(WeakBase::isWeak);
    return weak.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Note.of("base-weak", Severity.NOTICE, BASIS, "strength", "1.0 to 1.5 MPa").in(weak));
  }

  private static boolean isWeak(Room room) {
    return room.hasBase(BaseKind.WEAK)
        || room.hasBase(BaseKind.ASPHALT)
        || room.isOf(Substrate.GYPSUM);
  }
}
