package dev.fillplane.safety;

import dev.fillplane.material.Binder;
import java.util.Optional;

/** The wet mix on skin and in eyes: cement burns, gypsum dries out and irritates. */
final class WetMix implements Rule {

  /** Of fresh cement. */
  static final int LEAST_PH = 12;

  private static final int MOST_PH = 13;
  private static final int RINSE_MINUTES = 15;
  private static final int EU_RINSE_MINUTES = 20;

  private static final String CEMENT =
      "Common cement: H315, H317, H318, H335 (from memory); wet mix of pH 12 to 13 (ASTM F710);"
          + " soluble chromium (VI) at most 2 mg/kg of dry cement (REACH XVII 47); rinsing for 15"
          + " minutes, 20 in the EU template (from memory); eye and body wash within the work area:"
          + " 29 CFR 1926.50(g)";

  private static final String GYPSUM =
      "common practice, no source; the safety data sheet of the product decides";

  /** How long eyes are rinsed. */
  static int rinseMinutes(Premises premises) {
    boolean us = premises.jurisdiction().equals(Optional.of(Jurisdiction.US));
    return us ? RINSE_MINUTES : EU_RINSE_MINUTES;
  }

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.mixes()) {
      return Optional.empty();
    }
    return Optional.of(
        job.sheet().binder() == Binder.CEMENT
            ? cement(job)
            : Note.of("wet-gypsum", Severity.CAUTION, GYPSUM));
  }

  private static Note cement(SafetyInput job) {
    return Note.of(
        "wet-cement",
        Severity.WARNING,
        CEMENT,
        "ph",
        LEAST_PH + " to " + MOST_PH,
        "minutes",
        rinseMinutes(job.premises()),
        "chromium",
        "2 mg/kg");
  }
}
