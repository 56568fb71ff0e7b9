package dev.fillplane.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

/** Quantities as they are bought, worked out by hand. */
class MeasureTest {

  private static String up(double inside, SaleUnit unit) {
    return Measure.up(inside, unit).value().toPlainString();
  }

  private static String packs(String needed, String pack) {
    Measure measure = new Measure(new BigDecimal(needed), SaleUnit.METRE);
    return measure.inPacksOf(new BigDecimal(pack)).value().toPlainString();
  }

  @Test
  void isRoundedUpToTheStepOfItsUnit() {
    assertEquals("3", up(2.01, SaleUnit.BAG));
    assertEquals("1", up(0.002, SaleUnit.PIECE));
    assertEquals("1.51", up(0.0015001, SaleUnit.LITRE));
    assertEquals("0.5", up(0.41, SaleUnit.DAY));
    assertEquals("0.51", up(0.501 * 3600, SaleUnit.HOUR));
    assertEquals("0.00", up(0, SaleUnit.METRE));
  }

  /** 0.1 + 0.2 is a little over 0.3 in binary fractions. */
  @Test
  void theLastDigitsOfASumCostNothing() {
    assertEquals("0.30", up(0.1 + 0.2, SaleUnit.METRE));
    assertEquals("3", up(3 * (1 + 1e-15), SaleUnit.BAG));
  }

  /** A foot is 0.3048 m, a gallon 231 cubic inches, four quarts. */
  @Test
  void changesUnitsExactly() {
    assertEquals("192.50", up(58.674, SaleUnit.FOOT));
    assertEquals("2.00", up(0.007570823568, SaleUnit.GALLON));
    assertEquals("8.00", up(0.007570823568, SaleUnit.QUART));
    assertEquals("10.00", up(0.9290304, SaleUnit.SQUARE_FOOT));
    assertEquals("55.12", up(25, SaleUnit.POUND));
  }

  @Test
  void wholePacksAreBought() {
    assertEquals("25", packs("13.76", "25"));
    assertEquals("25", packs("25.00", "25"));
    assertEquals("50", packs("25.01", "25"));
    assertEquals("0.9", packs("0.73", "0.3"));
    assertEquals("0", packs("0", "25"));
  }
}
