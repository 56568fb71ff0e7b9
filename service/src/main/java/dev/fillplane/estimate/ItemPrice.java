package dev.fillplane.estimate;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What an item costs.
 *
 * @param price for one unit
 * @param per UCUM code of the unit
 * @param minimumPack quantity of the pack in which it is sold; any quantity unless told
 * @param breaks prices of larger quantities, the smallest first; none
 */
public record ItemPrice(
    BigDecimal price, String per, OptionalDouble minimumPack, List<PriceBreak> breaks) {

  /** Fills in what was left out. */
  public ItemPrice {
    breaks = breaks == null ? List.of() : List.copyOf(breaks);
  }

  /** An hour of work. */
  static ItemPrice perHour(BigDecimal price) {
    return new ItemPrice(price, SaleUnit.HOUR.code(), OptionalDouble.empty(), List.of());
  }

  /** The price of a unit where so much is bought at once. */
  BigDecimal at(BigDecimal quantity) {
    BigDecimal holds = price;
    for (PriceBreak larger : breaks) {
      if (BigDecimal.valueOf(larger.from()).compareTo(quantity) <= 0) {
        holds = larger.price();
      }
    }
    return holds;
  }

  /** What is bought where so much is needed. */
  Measure order(Measure needed) {
    return minimumPack.isPresent()
        ? needed.inPacksOf(BigDecimal.valueOf(minimumPack.getAsDouble()))
        : needed;
  }
}
