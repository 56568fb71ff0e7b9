package dev.fillplane.estimate;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Money;
import dev.fillplane.quantity.UnitSystem;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Whether a price book makes sense to callers of one system of units. */
public final class PriceBookCheck {

  private final UnitSystem units;
  private final Findings findings;

  /** Tells what it finds to {@code findings}. */
  public PriceBookCheck(UnitSystem units, Findings findings) {
    this.units = units;
    this.findings = findings;
  }

  /**
   * Finds currencies and items that are none, units that do not fit, negative prices and breaks out
   * of order.
   *
   * @param place of the price book
   */
  public void check(PriceBook book, Place place) {
    if (!Money.isCurrency(book.currency())) {
      findings.error("unknown-currency", place.at("currency"), "code", book.currency());
    }
    book.items()
        .forEach(
            (code, price) -> {
              Place at = place.at("items").at(code);
              Optional<Item> item = Item.find(code);
              item.ifPresent(known -> checkUnit(known, price.per(), at.at("per")));
              if (item.isEmpty()) {
                findings.error("unknown-item", at, "code", code);
              }
              checkPrices(code, price, at);
            });
  }

  private void checkUnit(Item item, String per, Place place) {
    Optional<SaleUnit> unit = item.saleUnit(per);
    String fitting =
        item.saleUnits(units).stream().map(SaleUnit::code).collect(Collectors.joining(", "));
    if (unit.isEmpty()) {
      findings.error(
          "unit-does-not-fit", place, "unit", per, "item", item.code(), "units", fitting);
    } else if (!unit.get().isOf(units)) {
      findings.error("units-mixed", place, "unit", per, "units", fitting);
    }
  }

  private void checkPrices(String code, ItemPrice price, Place place) {
    notNegative(price.price(), code, place.at("price"), findings);
    List<PriceBreak> breaks = price.breaks();
    for (int i = 0; i < breaks.size(); i++) {
      Place at = place.at("breaks").at(i);
      notNegative(breaks.get(i).price(), code, at.at("price"), findings);
      if (i > 0 && breaks.get(i).from() <= breaks.get(i - 1).from()) {
        findings.error("breaks-out-of-order", at.at("from"), "item", code);
      }
    }
  }

  static void notNegative(BigDecimal price, String name, Place place, Findings findings) {
    if (price.signum() < 0) {
      findings.error("price-negative", place, "name", name);
    }
  }
}
