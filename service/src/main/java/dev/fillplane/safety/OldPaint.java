package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/** Lead in paint and coatings of housing before 1978. */
final class OldPaint implements Rule {

  private static final int FIRST_CLEAR_YEAR = 1978;

  private static final double DAY = 8;

  /** More hours are taken to be those of several days. */
  private static final double LONGEST_SHIFT = 12;

  private static final double MICROGRAM = 1e-9;
  private static final double LIMIT = 50 * MICROGRAM;

  private static final String BASIS =
      "40 CFR 745 (housing built before 1978); 29 CFR 1926.62: lead in air 50 ug/m3, action level"
          + " 30, mean of 8 h; beyond 8 h the limit is 400 ug/m3 over the hours";

  @Override
  public Optional<Note> note(SafetyInput job) {
    PouredRooms old = job.all().that(room -> OldFlooring.builtBefore(FIRST_CLEAR_YEAR, room));
    if (old.isEmpty() || job.premises().isTested()) {
      return Optional.empty();
    }
    return Optional.of(
        Note.of(
                "lead-paint-suspect",
                job.grinds() ? Severity.DANGER : Severity.WARNING,
                BASIS,
                "year",
                OldFlooring.earliest(old),
                "clear",
                FIRST_CLEAR_YEAR)
            .limited(
                Amount.of(
                    limit(Math.min(LONGEST_SHIFT, job.grindHours())), Dimension.CONCENTRATION))
            .in(old));
  }

  /** Lead in the air over a shift of some hours. */
  static double limit(double hours) {
    return LIMIT * DAY / Math.max(DAY, hours);
  }
}
