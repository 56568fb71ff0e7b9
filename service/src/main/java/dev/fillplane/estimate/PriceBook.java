package dev.fillplane.estimate;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What items cost the caller.
 *
 * @param currency code of ISO 4217, of every price
 * @param items prices by the code of their item; what is not told has no price
 */
public record PriceBook(String currency, Map<String, ItemPrice> items) {

  /** Copies the prices, in the order of their codes. */
  public PriceBook {
    items = sorted(items);
  }

  /** A copy in the order of the keys, so that the order of a request does not matter. */
  static <T> SortedMap<String, T> sorted(Map<String, T> told) {
    return Collections.unmodifiableSortedMap(new TreeMap<>(told == null ? Map.of() : told));
  }
}
