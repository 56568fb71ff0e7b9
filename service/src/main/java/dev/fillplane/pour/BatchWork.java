package dev.fillplane.pour;

/**
 * How long the parts of the work on one batch take (common practice, no source: a minute to fill
 * the barrel and open the bags, 15 m to carry at 1 m/s, 20 s to pour a bucket, 20 s to rake and
 * spike-roll a square metre).
 *
 * @param mixTime time under the mixer
 * @param bags bags in a batch; each is a bucket to carry
 * @param area floor that a batch covers
 */
record BatchWork(double mixTime, int bags, double area) {

  private static final double CHARGE = 60;
  private static final double ONE_WAY = 15;
  private static final double POUR = 20;
  private static final double SPREAD = 20;
  private static final double BUCKET = 2 * ONE_WAY + POUR;

  /** One turn of a mixer. */
  double mixing() {
    return CHARGE + mixTime;
  }

  /** Work of those who carry, pour and spread, in person-seconds. */
  double placing() {
    return bags * BUCKET + area * SPREAD;
  }

  /** From first water until the last bucket is poured by {@code hands} people. */
  double untilPlaced(int hands) {
    return mixTime + (rounds(hands) - 1) * BUCKET + ONE_WAY + POUR;
  }

  /** How long a barrel is away from the next batch. */
  double barrel(int hands) {
    return mixing() + rounds(hands) * BUCKET;
  }

  private int rounds(int hands) {
    return (bags + hands - 1) / hands;
  }
}
