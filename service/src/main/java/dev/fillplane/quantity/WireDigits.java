package dev.fillplane.quantity;

/**
 * The {@link Rounding#WIRE_DIGITS} significant digits of a number, found with one multiplication
 * where that is sure to be right: the product by a power of ten has an error of at most half a unit
 * in its last place, far less than what the number is then away from the middle between two
 * integers. Where it is not sure, callers fall back on exact decimals.
 */
public final class WireDigits {

  /** Answer of {@link #places} for a number that wants exact decimals. */
  public static final int UNSURE = Integer.MIN_VALUE;

  /** Powers of ten up to here are exact. */
  private static final int MOST_EXACT = 22;

  private static final double[] POWERS = powers();

  /** 1e12 has a last place of 1.2e-4. */
  private static final double NEAR_MIDDLE = 1e-3;

  private static final double LOG_2 = Math.log10(2);

  private WireDigits() {}

  private static double[] powers() {
    double[] powers = new double[MOST_EXACT + 1];
    powers[0] = 1;
    for (int i = 1; i < powers.length; i++) {
      powers[i] = powers[i - 1] * 10;
    }
    return powers;
  }

  /**
   * How many decimals a number has with its digits, from 0 to 22, or {@link #UNSURE}.
   *
   * @param size absolute value of the number
   */
  public static int places(double size) {
    if (!(size >= 1e-10 && size < 1e11)) {
      return UNSURE;
    }
    int magnitude = (int) Math.floor(Math.getExponent(size) * LOG_2);
    if (size >= power(magnitude + 1)) {
      magnitude++;
    }
    int places = Rounding.WIRE_DIGITS - 1 - magnitude;
    double scaled = size * POWERS[places];
    double middle = Math.abs(scaled - Math.floor(scaled) - 0.5);
    return middle > NEAR_MIDDLE ? places : UNSURE;
  }

  /** The same digits as an integer: the number times ten to its places, rounded. */
  public static long digits(double size, int places) {
    return (long) Math.rint(size * POWERS[places]);
  }

  /** The number that digits and places tell; correctly rounded, since both parts are exact. */
  static double number(long digits, int places) {
    return digits / POWERS[places];
  }

  private static double power(int exponent) {
    return exponent < 0 ? 1 / POWERS[-exponent] : POWERS[exponent];
  }
}
