package dev.fillplane.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rounding to the wire against exact decimals. */
class RoundingTest {

  @Test
  void twelveDigits() {
    assertEquals(1.23456789012, Rounding.toWire(1.234567890123456), 0);
    assertEquals(-0.00123456789012, Rounding.toWire(-0.001234567890123456), 0);
    assertEquals(123456.789012, Rounding.toWire(123456.7890123456), 0);
    assertEquals(10, Rounding.toWire(9.9999999999996), 0);
    assertEquals(9.99999999999, Rounding.toWire(9.9999999999949), 0);
  }

  /** The middle between two numbers of twelve digits goes to the even one, as exact decimals do. */
  @Test
  void middles() {
    check(0.5 + 1.0 / (1L << 13));
    for (int i = 1; i < 50; i++) {
      check(i + 1.0 / (1L << i));
      check(123456789012.5 / Math.pow(10, i % 12));
    }
  }

  @Test
  void anySize() {
    Random random = new Random(1);
    for (int i = 0; i < 200_000; i++) {
      check((random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(30) - 14));
    }
    check(Double.MIN_VALUE);
    check(Double.MAX_VALUE);
    for (int exponent = -20; exponent < 20; exponent++) {
      check(Math.pow(10, exponent));
      check(Math.nextDown(Math.pow(10, exponent)));
      check(Math.nextUp(Math.pow(10, exponent)));
    }
  }

  private static void check(double value) {
    double exact =
        new BigDecimal(value).round(new MathContext(12, RoundingMode.HALF_EVEN)).doubleValue();
    if (value == Math.rint(value) && Math.abs(value) < 1e11) {
      exact = value;
    }
    assertEquals(exact, Rounding.toWire(value), 0, () -> "of " + value);
  }
}
