package dev.fillplane.target;

/**
 * What a volume costs.
 *
 * @param fill per m3 of underlayment; not negative
 * @param grind per m3 of floor that is ground off; not negative
 */
record Rates(double fill, double grind) {

  /** Price of grinding over that of filling where none are told; our choice. */
  static final double USUAL_RATIO = 2;

  /** Numbers stay within this of each other, so that free filling or grinding can be reckoned. */
  private static final double MOST_RATIO = 1e6;

  /** Where no prices are told. */
  static Rates usual() {
    return new Rates(1, USUAL_RATIO);
  }

  /** Those told, or the usual. */
  static Rates of(TargetWish wish) {
    return wish.prices()
        .map(prices -> new Rates(prices.fill(), prices.grind()))
        .orElseGet(Rates::usual);
  }

  /** Share of the price of filling in the sum of both; where both are free, the usual. */
  double fillShare() {
    return fill + grind > 0 ? fill / (fill + grind) : 1 / (1 + USUAL_RATIO);
  }

  /** Price of filling where the lower of both is 1. */
  double relativeFill() {
    return fill + grind > 0 ? fill / unit() : 1;
  }

  /** Price of grinding where the lower of both is 1. */
  double relativeGrind() {
    return fill + grind > 0 ? grind / unit() : USUAL_RATIO;
  }

  private double unit() {
    return Math.max(Math.min(fill, grind), Math.max(fill, grind) / MOST_RATIO);
  }
}
