package dev.fillplane.estimate;

import dev.fillplane.quantity.Rounding;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A decimal number of a unit of sale.
 *
 * @param value exact, as it is multiplied by a price
 */
public record Measure(BigDecimal value, SaleUnit unit) {

  private static final MathContext WIRE = new MathContext(Rounding.WIRE_DIGITS);

  /**
   * A quantity rounded up to the decimals of its unit; what differs from a whole step only in the
   * last digits of a sum is not rounded up.
   *
   * @param inside in the unit inside, not negative
   */
  static Measure up(double inside, SaleUnit unit) {
    BigDecimal value = new BigDecimal(inside / unit.factor()).round(WIRE);
    return new Measure(value.setScale(unit.decimals(), RoundingMode.CEILING), unit);
  }

  /** The sum of two of one unit. */
  Measure plus(Measure other) {
    return new Measure(value.add(other.value), unit);
  }

  /** The least number of whole packs that is enough, in this unit. */
  Measure inPacksOf(BigDecimal pack) {
    return new Measure(
        value.divide(pack, 0, RoundingMode.CEILING).multiply(pack).stripTrailingZeros(), unit);
  }

  /** As in a sentence. */
  String text() {
    return value.toPlainString() + (unit == SaleUnit.PIECE ? "" : " " + unit.code());
  }

  boolean isZero() {
    return value.signum() == 0;
  }
}
