package dev.fillplane.quantity;

/** Inches as they stand on a tape: whole ones and a fraction down to 1/16. */
public final class Inches {

  private static final int PARTS = 16;

  private Inches() {}

  /** To the nearest 1/16, the fraction in its lowest terms, without a unit: {@code 1 3/8}. */
  public static String text(double inches) {
    long parts = Math.round(Math.abs(inches) * PARTS);
    long whole = parts / PARTS;
    long rest = parts % PARTS;
    String sign = inches < 0 && parts > 0 ? "-" : "";
    if (rest == 0) {
      return sign + whole;
    }
    long common = Long.lowestOneBit(rest);
    String fraction = rest / common + "/" + PARTS / common;
    return sign + (whole > 0 ? whole + " " : "") + fraction;
  }
}
