package dev.fillplane.safety;

import dev.fillplane.material.Binder;
import java.util.Optional;

/** The wet mix on skin and in eyes: cement burns, gypsum dries out and irritates. */
final class WetMix implements Rule {

  private static final String CEMENT =
      "Common cement: H315, H317, H318, H335 (from memory); wet mix of pH 12 to 13 (ASTM F710);"
          + " eye and body wash within the work area: 29 CFR 1926.50(g)";

  private static final String GYPSUM =
      "common practice, no source; the safety data sheet of the product decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    if (!job.mixes()) {
      return Optional.empty();
    }
    return Optional.of(
        job.sheet().binder() == Binder.CEMENT
            ? Note.of("wet-cement", Severity.WARNING, CEMENT, "ph", "12 to 13")
            : Note.of("wet-gypsum", Severity.CAUTION, GYPSUM));
  }
}
