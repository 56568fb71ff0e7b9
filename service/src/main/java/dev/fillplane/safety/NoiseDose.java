package dev.fillplane.safety;

/**
 * Noise of a day. The dose is that of 29 CFR 1926.52: of a level L people may hear T = 8 / 2^((L -
 * 90) / 5) hours, and the parts of T add up (table D-2 rounds T). The level of a day is its mean
 * energy over 8 hours, as the EU and the UK count it.
 *
 * @param dose of the US; 1 is the limit
 * @param energy hours times 10^(L / 10)
 */
record NoiseDose(double dose, double energy) {

  /** Hours of a day of work. */
  static final int DAY = 8;

  static final NoiseDose NONE = new NoiseDose(0, 0);

  private static final double CRITERION = 90;
  private static final double EXCHANGE = 5;

  /** Hours a day for which {@code level}, in dBA, is allowed in the US. */
  static double allowedHours(double level) {
    return DAY / Math.pow(2, (level - CRITERION) / EXCHANGE);
  }

  /** The same with {@code hours} more of {@code level} dBA. */
  NoiseDose and(double level, double hours) {
    return new NoiseDose(
        dose + hours / allowedHours(level), energy + hours * Math.pow(10, level / 10));
  }

  /** Level of the day in dBA; minus infinity without any noise. */
  double level() {
    return 10 * Math.log10(energy / DAY);
  }
}
