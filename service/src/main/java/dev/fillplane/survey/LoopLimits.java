package dev.fillplane.survey;

/**
 * What may be left over round a loop: what the caller allows, else 12 mm sqrt(loop length in km)
 * (third order; Federal Geodetic Control Committee 1984, from memory), else 5 mm sqrt(setups in the
 * loop) (common building practice).
 */
record LoopLimits(Survey survey) {

  private static final double THIRD_ORDER = 0.012;
  private static final double PER_SETUP = 0.005;
  private static final double KILOMETRE = 1000;

  /** Whether the limit is the caller's own. */
  boolean toldByCaller() {
    return survey.misclosureLimit().isPresent();
  }

  /** The limit of a loop through so many setups. */
  double of(int setups) {
    if (survey.misclosureLimit().isPresent()) {
      return survey.misclosureLimit().getAsDouble();
    }
    return survey.loopLength().isPresent()
        ? THIRD_ORDER * Math.sqrt(Math.max(0, survey.loopLength().getAsDouble()) / KILOMETRE)
        : PER_SETUP * Math.sqrt(setups);
  }
}
