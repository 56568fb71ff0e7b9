package dev.fillplane.estimate;

import dev.fillplane.plan.PlanRequest;
import dev.fillplane.plan.Variation;
import dev.fillplane.quantity.UnitSystem;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan to be told and priced line by line.
 *
 * @param units the caller's units, those of the plan too
 * @param plan the unit
 * @param prices what items cost; quantities alone unless told
 * @param codes the caller's own codes by those of items; none
 * @param rates of work beside the pour; the usual ones
 * @param hourlyRates what an hour costs by the code of a {@link LabourRole}, or {@link
 *     LabourRole#USUAL} for all that are not told; a price of the line's own item goes before
 * @param bid what somebody else asks for the whole, in the currency of the prices
 * @param variations other ways to do it, to be priced too; none
 */
public record LineItemsRequest(
    UnitSystem units,
    PlanRequest plan,
    Optional<PriceBook> prices,
    Map<String, String> codes,
    WorkRates rates,
    Map<String, BigDecimal> hourlyRates,
    Optional<BigDecimal> bid,
    List<Variation> variations) {

  /** Fills in what was left out. */
  public LineItemsRequest {
    codes = PriceBook.sorted(codes);
    rates = rates == null ? WorkRates.usual() : rates;
    hourlyRates = PriceBook.sorted(hourlyRates);
    variations = variations == null ? List.of() : List.copyOf(variations);
  }
}
