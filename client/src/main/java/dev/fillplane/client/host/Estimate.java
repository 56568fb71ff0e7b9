package dev.fillplane.client.host;

import dev.fillplane.client.generated.model.LineItems;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A unit line by line.
 *
 * @param lines its line items, by kind
 * @param total sum of all amounts, where there are prices
 * @param currency ISO 4217 code of all amounts, where there are prices
 * @param unpriced codes of the lines without a price, which are not in the total
 * @param verdict whether the wet edge holds: holds, tight or breaks; more words may come
 * @param warnings what is odd or was assumed, for people: read them before you buy
 * @param whole the answer as it came, with waste, totals by kind and other ways
 */
public record Estimate(
    List<LineItem> lines,
    Optional<BigDecimal> total,
    Optional<String> currency,
    List<String> unpriced,
    String verdict,
    List<String> warnings,
    LineItems whole) {

  /** Copies the lists. */
  public Estimate {
    lines = List.copyOf(lines);
    unpriced = List.copyOf(unpriced);
    warnings = List.copyOf(warnings);
  }
}
