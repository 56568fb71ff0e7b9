package dev.fillplane.estimate;

import dev.fillplane.quantity.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The lines in sum. Amounts are sums of amounts that are rounded already.
 *
 * @param hours of all labour lines
 * @param kinds cost by kind, in the order of {@link ItemKind}; empty without prices
 * @param total of all lines that have a price; left out without prices
 * @param unpriced codes of lines without a price, which are not in the total; empty without prices
 */
public record LineTotals(
    Measure hours, List<KindTotal> kinds, Optional<Money> total, List<String> unpriced) {

  /** Copies the lists. */
  public LineTotals {
    kinds = List.copyOf(kinds);
    unpriced = List.copyOf(unpriced);
  }

  /**
   * Adds up.
   *
   * @param currency that of the prices, if there are any
   */
  static LineTotals of(List<LineItem> lines, Optional<String> currency) {
    return new LineTotals(
        hours(lines),
        currency.map(in -> kinds(lines, in)).orElse(List.of()),
        currency.map(in -> sum(lines, in)),
        currency.isEmpty()
            ? List.of()
            : lines.stream().filter(l -> l.amount().isEmpty()).map(LineItem::code).toList());
  }

  /** What is paid for all but the hours. */
  Optional<Money> outlay() {
    return total.map(
        all ->
            kinds.stream()
                .filter(kind -> kind.kind() == ItemKind.LABOUR)
                .map(KindTotal::amount)
                .reduce(all, Money::minus));
  }

  private static Measure hours(List<LineItem> lines) {
    return lines.stream()
        .filter(line -> line.kind() == ItemKind.LABOUR)
        .map(LineItem::quantity)
        .reduce(Measure.up(0, SaleUnit.HOUR), Measure::plus);
  }

  private static List<KindTotal> kinds(List<LineItem> lines, String currency) {
    List<KindTotal> kinds = new ArrayList<>();
    for (ItemKind kind : ItemKind.values()) {
      List<LineItem> some = lines.stream().filter(line -> line.kind() == kind).toList();
      if (!some.isEmpty()) {
        kinds.add(new KindTotal(kind, sum(some, currency)));
      }
    }
    return kinds;
  }

  private static Money sum(List<LineItem> lines, String currency) {
    return lines.stream()
        .flatMap(line -> line.amount().stream())
        .reduce(Money.zero(currency), Money::plus);
  }
}
