package dev.fillplane.safety;

/**
 * How long lifting goes on, as the revised lifting equation sorts it: short up to 1 h, moderate up
 * to 2 h, long up to 8 h.
 *
 * <p>Rest or light work parts two spells only if it is long enough: as long as the lifting before
 * it (short), 0.3 of it (moderate). Otherwise the spells count as one (NIOSH Pub. 94-110, revised
 * 2021, p. 14).
 */
public enum LiftingDuration {
  SHORT(1.0),
  MODERATE(0.3),
  LONG(Double.POSITIVE_INFINITY);

  private static final double HOUR = 3600;

  private final double recovery;

  LiftingDuration(double recovery) {
    this.recovery = recovery;
  }

  /** Of one spell of {@code hours}. */
  public static LiftingDuration of(double hours) {
    if (hours <= 1) {
      return SHORT;
    }
    return hours <= 2 ? MODERATE : LONG;
  }

  /**
   * Of several spells.
   *
   * @param lifting length of each, s
   * @param light rest or light work after each, s; after the last it may be left out
   */
  public static LiftingDuration of(double[] lifting, double[] light) {
    LiftingDuration longest = SHORT;
    double together = 0;
    for (int i = 0; i < lifting.length; i++) {
      together += lifting[i];
      LiftingDuration duration = of(together / HOUR);
      longest = duration.compareTo(longest) > 0 ? duration : longest;
      if (i < light.length && light[i] >= duration.recovery * together) {
        together = 0;
      }
    }
    return longest;
  }
}
