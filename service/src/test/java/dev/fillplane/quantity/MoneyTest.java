package dev.fillplane.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
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

  private static Money euros(String amount) {
    return new Money(new BigDecimal(amount), Optional.of("EUR"));
  }

  @Test
  void sumsOfCentsAreExact() {
    Money sum = Money.zero("EUR");
    for (int i = 0; i < 10; i++) {
      sum = sum.plus(euros("0.10"));
    }
    assertEquals(euros("1.00"), sum);
    assertEquals(euros("-0.20"), euros("0.10").minus(euros("0.30")));
  }

  /** 1.005 as a binary fraction is less than that and would come to 1.00. */
  @Test
  void multiplesAreRoundedOnceHalfUp() {
    assertEquals(euros("1.01"), euros("2.01").times(new BigDecimal("0.5")));
    assertEquals(euros("-1.01"), euros("2.01").times(new BigDecimal("-0.5")));
    assertEquals(euros("2.01"), euros("2.01").times(new BigDecimal("1.0000")));
  }

  @Test
  void amountsHaveAnOrderInOneCurrencyOnly() {
    assertTrue(euros("9.99").compareTo(euros("10.00")) < 0);
    assertEquals(0, euros("10").compareTo(euros("10.004")));
    Money dollars = Money.of(1, Optional.of("USD"));
    assertThrows(IllegalArgumentException.class, () -> euros("1").compareTo(dollars));
    assertThrows(IllegalArgumentException.class, () -> euros("1").plus(dollars));
  }
}
