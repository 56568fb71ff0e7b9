package dev.fillplane.safety;

import java.util.Optional;

/** A floor whose year is not told counts as old until it is tested. */
final class FlooringOfUnknownAge implements Rule {

  private static final String BASIS =
      "29 CFR 1926.1101(k) (flooring up to 1980), UK practice (before 2000), paint before 1978 (40"
          + " CFR 745); a year that is not known counts as old: common practice, no source";

  @Override
  public Optional<Note> note(SafetyInput job) {
    BuiltRooms unknown = BuiltRooms.unknown(job);
    if (unknown.isEmpty() || job.premises().isTested()) {
      return Optional.empty();
    }
    return Optional.of(
        Note.of(
            "asbestos-year-unknown",
            job.grinds() || job.premises().hadResilient() ? Severity.DANGER : Severity.WARNING,
            BASIS,
            "rooms",
            unknown.names()));
  }
}
