package dev.fillplane.estimate;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.plan.Variation;
import java.math.BigDecimal;
import java.util.Map;

/** What is wrong with a request beside its plan. */
final class RequestCheck {

  private static final Place ROOT = Place.root();

  private final LineItemsRequest request;
  private final Findings findings;

  private RequestCheck(LineItemsRequest request, Findings findings) {
    this.request = request;
    this.findings = findings;
  }

  static void check(LineItemsRequest request, Findings findings) {
    new RequestCheck(request, findings).check();
  }

  private void check() {
    if (request.plan().units() != request.units()) {
      findings.error("units-of-the-request", ROOT.at("plan").at("units"));
    }
    request
        .prices()
        .ifPresent(
            book -> new PriceBookCheck(request.units(), findings).check(book, ROOT.at("prices")));
    checkCodes();
    RateTerm.check(request.rates(), ROOT.at("rates"), findings);
    checkHourlyRates(request.hourlyRates(), ROOT.at("hourlyRates"));
    request.bid().ifPresent(this::checkBid);
    Variation.checkNames(request.variations(), ROOT.at("variations"), findings);
  }

  private void checkCodes() {
    for (String code : request.codes().keySet()) {
      if (Item.find(code).isEmpty()) {
        findings.error("unknown-item", ROOT.at("codes").at(code), "code", code);
      }
    }
  }

  private void checkHourlyRates(Map<String, BigDecimal> rates, Place place) {
    if (!rates.isEmpty()) {
      wantCurrency(place);
    }
    rates.forEach(
        (role, price) -> {
          if (!role.equals(LabourRole.USUAL) && LabourRole.find(role).isEmpty()) {
            findings.error("unknown-role", place.at(role), "role", role);
          }
          PriceBookCheck.notNegative(price, "an hour", place.at(role), findings);
        });
  }

  private void checkBid(BigDecimal bid) {
    wantCurrency(ROOT.at("bid"));
    PriceBookCheck.notNegative(bid, "the bid", ROOT.at("bid"), findings);
  }

  private void wantCurrency(Place place) {
    if (request.prices().isEmpty()) {
      findings.error("money-without-currency", place);
    }
  }
}
