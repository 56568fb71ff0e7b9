package dev.fillplane.safety;

import dev.fillplane.room.Substrate;
import java.util.Optional;

/** A base weaker than the pour: dusting, hollow, lightweight, asphalt, gypsum. */
final class WeakBase implements Rule {

  private static final String BASIS =
      "pull-off strength of 1.0 to 1.5 MPa: common practice, no source; the data sheet decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    boolean weak =
        job.premises().base().contains(BaseKind.WEAK)
            || job.premises().base().contains(BaseKind.ASPHALT)
            || job.rooms().stream()
                .anyMatch(room -> room.substrate().equals(Optional.of(Substrate.GYPSUM)));
    return job.mixes() && weak
        ? Optional.of(Note.of("base-weak", Severity.NOTICE, BASIS, "strength", "1.0 to 1.5 MPa"))
        : Optional.empty();
  }
}
