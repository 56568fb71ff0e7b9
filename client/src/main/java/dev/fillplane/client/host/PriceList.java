package dev.fillplane.client.host;

import dev.fillplane.client.generated.model.LineItemsRequest;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;

/**
 * What the caller pays.
 *
 * @param currency ISO 4217 code of every price
 * @param items prices by the code of their item; {@code GET /v1/capabilities} lists the codes
 * @param hourlyRates what an hour of work costs by role; {@code usual} for all that are not told
 * @param ownCodes the host's codes by the codes of items, handed back with the lines
 * @param details what else there is to tell (breaks by quantity, rates of work, a bid, other ways),
 *     set on the request
 */
public record PriceList(
    String currency,
    Map<String, Price> items,
    Map<String, BigDecimal> hourlyRates,
    Map<String, String> ownCodes,
    Consumer<LineItemsRequest> details) {

  /** Copies the maps. */
  public PriceList {
    items = copy(items);
    hourlyRates = copy(hourlyRates);
    ownCodes = copy(ownCodes);
  }

  /** Prices of items and of hours of work. */
  public PriceList(String currency, Map<String, Price> items, Map<String, BigDecimal> hourlyRates) {
    this(currency, items, hourlyRates, Map.of(), request -> {});
  }

  /** The same with the host's own codes. */
  public PriceList withOwnCodes(Map<String, String> codes) {
    return new PriceList(currency, items, hourlyRates, codes, details);
  }

  private static <T> Map<String, T> copy(Map<String, T> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }
}
