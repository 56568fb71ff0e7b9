package dev.fillplane.client.host;

import dev.fillplane.client.generated.model.Amount;
import dev.fillplane.client.generated.model.ItemPrice;
import dev.fillplane.client.generated.model.LineItems;
import dev.fillplane.client.generated.model.LineItemsRequest;
import dev.fillplane.client.generated.model.Money;
import dev.fillplane.client.generated.model.PriceBook;
import dev.fillplane.client.generated.model.Warning;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Units with prices as requests of the service, and its line items as an estimate. */
final class Estimates {
  private Estimates() {}

  static LineItemsRequest request(Unit unit, Optional<PriceList> prices) {
    LineItemsRequest request =
        new LineItemsRequest().units(Requests.units(unit.measures())).plan(Requests.of(unit));
    prices.ifPresent(list -> price(request, list));
    return request;
  }

  static Estimate read(LineItems answer) {
    Optional<Money> total = Optional.ofNullable(answer.getTotals().getTotal());
    return new Estimate(
        answer.getLines().stream().map(Estimates::line).toList(),
        total.map(Estimates::amount),
        total.map(Money::getCurrency),
        answer.getTotals().getUnpriced(),
        answer.getVerdict(),
        answer.getWarnings().stream().map(Warning::getDetail).toList(),
        answer);
  }

  private static void price(LineItemsRequest request, PriceList list) {
    Map<String, ItemPrice> items = new LinkedHashMap<>();
    list.items().forEach((code, price) -> items.put(code, price(price)));
    request.prices(new PriceBook().currency(list.currency()).items(items));
    if (!list.hourlyRates().isEmpty()) {
      Map<String, String> rates = new LinkedHashMap<>();
      list.hourlyRates().forEach((role, rate) -> rates.put(role, rate.toPlainString()));
      request.hourlyRates(rates);
    }
    if (!list.ownCodes().isEmpty()) {
      request.codes(new LinkedHashMap<>(list.ownCodes()));
    }
    list.details().accept(request);
  }

  private static ItemPrice price(Price price) {
    ItemPrice told = new ItemPrice().price(price.price().toPlainString()).per(price.per());
    price.pack().ifPresent(pack -> told.minimumPack(pack.doubleValue()));
    return told;
  }

  private static LineItem line(dev.fillplane.client.generated.model.LineItem line) {
    return new LineItem(
        line.getCode(),
        Optional.ofNullable(line.getOwnCode()),
        line.getReference(),
        line.getKind(),
        line.getDescription(),
        quantity(line.getQuantity()),
        quantity(line.getOrder()),
        Optional.ofNullable(line.getUnitPrice()).map(BigDecimal::new),
        Optional.ofNullable(line.getAmount()).map(Estimates::amount),
        line.getBasis());
  }

  private static Quantity quantity(Amount amount) {
    return new Quantity(amount.getValue(), amount.getUnit());
  }

  private static BigDecimal amount(Money money) {
    return new BigDecimal(money.getAmount());
  }
}
