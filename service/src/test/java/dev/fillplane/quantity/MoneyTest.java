package dev.fillplane.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Rounding to the minor units that ISO 4217 gives each currency (0 for JPY, 3 for KWD). */
class MoneyTest {

  private static String told(double amount, String currency) {
    return Money.of(amount, Optional.ofNullable(currency)).amount().toPlainString();
  }

  @Test
  void centsAreRoundedHalfUp() {
    assertEquals("412.80", told(412.8, "EUR"));
    assertEquals("0.13", told(0.125, "USD"));
    assertEquals("-0.13", told(-0.125, "USD"));
    assertEquals("1.00", told(0.995, null));
  }

  @Test
  void eachCurrencyHasItsMinorUnits() {
    assertEquals("413", told(412.8, "JPY"));
    assertEquals("412.801", told(412.8006, "KWD"));
    assertEquals("412.80", told(412.8, "XAU"));
  }

  @Test
  void currenciesAreThoseOfTheStandard() {
    assertTrue(Money.isCurrency("EUR"));
    assertFalse(Money.isCurrency("EUX"));
    assertFalse(Money.isCurrency("eur"));
  }
}
