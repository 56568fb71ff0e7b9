package dev.fillplane.target;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Money;

/** Whether prices make sense. */
public final class PricesCheck {

  private PricesCheck() {}

  /**
   * Finds negative prices, prices that are both nothing, and currencies that are none.
   *
   * @param place of the prices
   */
  public static void check(Prices prices, Place place, Findings findings) {
    if (prices.fill() < 0) {
      findings.error("price-negative", place.at("fill"), "name", "fill");
    }
    if (prices.grind() < 0) {
      findings.error("price-negative", place.at("grind"), "name", "grind");
    }
    if (prices.fill() == 0 && prices.grind() == 0) {
      findings.error("prices-zero", place);
    }
    prices
        .currency()
        .filter(code -> !Money.isCurrency(code))
        .ifPresent(code -> findings.error("unknown-currency", place.at("currency"), "code", code));
  }
}
