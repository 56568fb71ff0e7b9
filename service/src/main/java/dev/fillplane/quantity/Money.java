package dev.fillplane.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Optional;

/**
 * An amount of money, rounded half up to the minor units of its currency; to two decimals where no
 * currency is told. On the wire the amount is a decimal string.
 *
 * @param amount with as many decimals as it is rounded to
 * @param currency code of ISO 4217, if one was told
 */
public record Money(BigDecimal amount, Optional<String> currency) implements Comparable<Money> {

  private static final int USUAL_DECIMALS = 2;

  /** Rounds the amount. */
  public Money {
    amount = amount.setScale(decimals(currency), RoundingMode.HALF_UP);
  }

  /**
   * Rounds an amount.
   *
   * @throws IllegalArgumentException if the currency is none of ISO 4217
   */
  public static Money of(double amount, Optional<String> currency) {
    return new Money(BigDecimal.valueOf(amount), currency);
  }

  /** Nothing, in a currency. */
  public static Money zero(String currency) {
    return new Money(BigDecimal.ZERO, Optional.of(currency));
  }

  /** The sum; exact, since both have the same decimals. */
  public Money plus(Money other) {
    return new Money(amount.add(inSame(other)), currency);
  }

  /** The difference. */
  public Money minus(Money other) {
    return new Money(amount.subtract(inSame(other)), currency);
  }

  /** A multiple, rounded once. */
  public Money times(BigDecimal factor) {
    return new Money(amount.multiply(factor), currency);
  }

  /**
   * By amount.
   *
   * @throws IllegalArgumentException if the currencies differ, here and in sums
   */
  @Override
  public int compareTo(Money other) {
    return amount.compareTo(inSame(other));
  }

  private BigDecimal inSame(Money other) {
    if (!other.currency.equals(currency)) {
      throw new IllegalArgumentException(currency + " and " + other.currency);
    }
    return other.amount;
  }

  /** Whether ISO 4217 knows a currency. */
  public static boolean isCurrency(String code) {
    return Currency.getAvailableCurrencies().stream()
        .anyMatch(currency -> currency.getCurrencyCode().equals(code));
  }

  /** Codes such as that of gold have no minor units. */
  private static int decimals(Optional<String> currency) {
    int decimals =
        currency.map(code -> Currency.getInstance(code).getDefaultFractionDigits()).orElse(-1);
    return decimals < 0 ? USUAL_DECIMALS : decimals;
  }
}
