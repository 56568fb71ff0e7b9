package dev.fillplane.safety;

import dev.fillplane.room.OldCovering;
import java.util.Optional;

/** A floor whose year is not told counts as old until it is tested. */
final class FlooringOfUnknownAge implements Rule {

  private static final String BASIS =
      "29 CFR 1926.1101(k) (flooring up to 1980), UK practice (before 2000), paint before 1978 (40"
          + " CFR 745); a year that is not known counts as old: common practice, no source";

  @Override
  public Optional<Note> note(SafetyInput job) {
    PouredRooms unknown = job.all().that(room -> room.built().isEmpty());
    if (unknown.isEmpty() || job.premises().isTested()) {
      return Optional.empty();
    }
    boolean grave = job.grinds() || OldFlooring.had(OldCovering.RESILIENT, unknown);
    Severity severity = grave ? Severity.DANGER : Severity.WARNING;
    return Optional.of(Note.of("asbestos-year-unknown", severity, BASIS).in(unknown));
  }
}
