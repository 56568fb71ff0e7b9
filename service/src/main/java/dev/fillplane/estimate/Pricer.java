package dev.fillplane.estimate;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.Binder;
import dev.fillplane.quantity.Money;
import java.math.BigDecimal;
import java.util.Optional;

/** Makes needs into lines at the caller's prices, which have been checked. */
final class Pricer {

  private final LineItemsRequest request;
  private final Binder binder;
  private final Findings findings;

  /**
   * For the lines of one plan.
   *
   * @param findings is told where more would cost less
   */
  Pricer(LineItemsRequest request, Binder binder, Findings findings) {
    this.request = request;
    this.binder = binder;
    this.findings = findings;
  }

  LineItem line(Need need) {
    Item item = need.item();
    Optional<ItemPrice> price = price(need);
    SaleUnit unit =
        price
            .flatMap(told -> item.saleUnit(told.per()))
            .orElseGet(() -> item.saleUnits(request.units()).get(0));
    Measure quantity = Measure.up(need.quantity(), unit);
    Measure waste = Measure.up(need.waste(), unit);
    Measure reserve = Measure.up(need.reserve(), unit);
    Measure needed = quantity.plus(waste).plus(reserve);
    Measure order = price.map(told -> told.order(needed)).orElse(needed);
    price.ifPresent(told -> tellCheaper(item, told, order));
    return new LineItem(
        item.code(),
        Optional.ofNullable(request.codes().get(item.code())),
        item.reference(binder),
        item.kind(),
        need.wording(),
        need.role(),
        quantity,
        told(waste),
        told(reserve),
        order,
        price.map(told -> told.at(order.value())),
        price.map(told -> amount(told, order)),
        need.basis());
  }

  /** That of the item, else the hour of its role. */
  private Optional<ItemPrice> price(Need need) {
    Optional<ItemPrice> own = request.prices().map(book -> book.items().get(need.item().code()));
    return own.isPresent() ? own : need.role().flatMap(this::perHour);
  }

  private Optional<ItemPrice> perHour(LabourRole role) {
    BigDecimal usual = request.hourlyRates().get(LabourRole.USUAL);
    return Optional.ofNullable(request.hourlyRates().getOrDefault(role.code(), usual))
        .map(ItemPrice::perHour);
  }

  private Money amount(ItemPrice price, Measure order) {
    BigDecimal exact = price.at(order.value()).multiply(order.value());
    return new Money(exact, request.prices().map(PriceBook::currency));
  }

  private static Optional<Measure> told(Measure part) {
    return part.isZero() ? Optional.empty() : Optional.of(part);
  }

  /** At a break the whole order is cheaper, so that a little more may cost less. */
  private void tellCheaper(Item item, ItemPrice price, Measure order) {
    for (PriceBreak larger : price.breaks()) {
      BigDecimal from = BigDecimal.valueOf(larger.from());
      Measure more = price.order(new Measure(from, order.unit()));
      if (from.compareTo(order.value()) > 0
          && amount(price, more).compareTo(amount(price, order)) < 0) {
        findings.warning(
            "more-costs-less",
            Place.root().at("prices").at("items").at(item.code()).at("breaks"),
            "item",
            item.code(),
            "order",
            order.text(),
            "more",
            more.text());
        return;
      }
    }
  }
}
