package dev.fillplane.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How numbers are rounded when they leave the service; nothing is rounded inside. */
public final class Rounding {

  /** Significant digits of a number on the wire. */
  public static final int WIRE_DIGITS = 12;

  private static final MathContext WIRE = new MathContext(WIRE_DIGITS, RoundingMode.HALF_EVEN);

  private Rounding() {}

  /** {@code value} rounded to {@link #WIRE_DIGITS} significant digits; negative zero becomes 0. */
  public static double toWire(double value) {
    if (value == 0 || (value == Math.rint(value) && Math.abs(value) < 1e11)) {
      return value + 0.0;
    }
    int places = WireDigits.places(Math.abs(value));
    return places == WireDigits.UNSURE
        ? new BigDecimal(value).round(WIRE).doubleValue()
        : Math.copySign(
            WireDigits.number(WireDigits.digits(Math.abs(value), places), places), value);
  }

  /** {@code value} rounded to {@code decimals} places, half away from zero. */
  public static double toDecimals(double value, int decimals) {
    double scale = Math.pow(10, decimals);
    return Math.copySign(Math.floor(Math.abs(value) * scale + 0.5) / scale, value) + 0.0;
  }
}
