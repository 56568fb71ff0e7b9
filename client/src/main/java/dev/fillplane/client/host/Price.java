package dev.fillplane.client.host;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What an item costs.
 *
 * @param price price of one unit
 * @param per UCUM code of the unit, one of those in which the item is sold
 * @param pack quantity of the pack in which it is sold; any quantity where empty
 */
public record Price(BigDecimal price, String per, Optional<BigDecimal> pack) {

  /** A price such as {@code Price.of("18.40", "{bag}")}. */
  public static Price of(String price, String per) {
    return new Price(new BigDecimal(price), per, Optional.empty());
  }

  /** The same, sold in whole packs only. */
  public Price inPacksOf(String quantity) {
    return new Price(price, per, Optional.of(new BigDecimal(quantity)));
  }
}
