package dev.fillplane.estimate;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.FindingsException;
import dev.fillplane.finding.Place;
import dev.fillplane.plan.Computed;
import dev.fillplane.plan.Plan;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.plan.Planner;
import dev.fillplane.plan.Variation;
import dev.fillplane.quantity.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Tells a plan line by line and prices it. The request is planned once, each variation once; a plan
 * that is there already is only priced, by {@link #lines}.
 *
 * <p>Quantities are those of the plan, rounded up; labour beside the pour and consumables are rates
 * of common practice, no source. Amounts are exact products of decimals, rounded once a line.
 */
public final class Estimator {

  private final LineItemsRequest request;
  private final Findings findings = new Findings();

  private Estimator(LineItemsRequest request) {
    this.request = request;
  }

  /**
   * Plans and prices.
   *
   * @throws FindingsException if the prices make no sense, or there is no plan
   */
  public static LineItems estimate(LineItemsRequest request, Computed computed) {
    Estimator estimator = new Estimator(request);
    RequestCheck.check(request, estimator.findings);
    estimator.findings.throwIfErrors();
    return estimator.estimate(computed);
  }

  /**
   * The lines of a plan; those of which nothing is needed are left out.
   *
   * @param planned the request of {@code plan}, that of {@code request} or a variation of it
   * @param findings is told where more would cost less
   */
  public static List<LineItem> lines(
      LineItemsRequest request, PlanRequest planned, Plan plan, Findings findings) {
    PlannedWork job = PlannedWork.of(planned, plan, request.rates());
    Visits visits = Visits.of(job);
    Pricer pricer = new Pricer(request, job.sheet().binder(), findings);
    return Stream.of(
            MaterialNeeds.of(job),
            ConsumableNeeds.of(job),
            LabourNeeds.of(job, visits),
            SiteNeeds.of(job, visits))
        .flatMap(List::stream)
        .filter(Need::isAny)
        .map(pricer::line)
        .toList();
  }

  private LineItems estimate(Computed computed) {
    Plan plan = plan();
    List<LineItem> lines = lines(request, request.plan(), plan, findings);
    LineTotals totals = totals(lines);
    List<Alternate> alternates =
        request.variations().stream().map(other -> alternate(other, totals)).toList();
    return new LineItems(
        plan.reference(),
        plan.pour().verdict(),
        lines,
        totals,
        ownOrBid(totals),
        alternates,
        warnings(plan),
        computed);
  }

  private Plan plan() {
    try {
      return Planner.plan(request.plan(), new Computed("", "", List.of()));
    } catch (FindingsException e) {
      throw new FindingsException(underPlan(e.errors()));
    }
  }

  private static List<Finding> underPlan(List<Finding> findings) {
    return findings.stream().map(finding -> finding.under("plan")).toList();
  }

  private LineTotals totals(List<LineItem> lines) {
    return LineTotals.of(lines, request.prices().map(PriceBook::currency));
  }

  /** A part of the cost beside a bid for the whole misleads. */
  private Optional<OwnOrBid> ownOrBid(LineTotals totals) {
    if (request.bid().isEmpty()) {
      return Optional.empty();
    }
    if (!totals.unpriced().isEmpty()) {
      findings.warning(
          "bid-against-part", Place.root().at("bid"), "count", totals.unpriced().size());
    }
    Optional<String> currency = request.prices().map(PriceBook::currency);
    return Optional.of(OwnOrBid.of(totals, new Money(request.bid().get(), currency)));
  }

  private Alternate alternate(Variation variation, LineTotals base) {
    try {
      Plan plan = Planner.plan(variation.request(), new Computed("", "", List.of()));
      LineTotals totals = totals(lines(request, variation.request(), plan, new Findings()));
      return new Alternate(
          variation.name(),
          Optional.of(plan.pour().verdict()),
          OptionalInt.of(plan.quantities().bags().order()),
          Optional.of(totals.hours()),
          totals.total(),
          totals.total().map(total -> total.minus(base.total().orElseThrow())),
          totals.unpriced(),
          List.of());
    } catch (FindingsException e) {
      return Alternate.failed(variation.name(), e.errors());
    }
  }

  private List<Finding> warnings(Plan plan) {
    List<Finding> warnings = new ArrayList<>(underPlan(plan.warnings()));
    warnings.addAll(findings.warnings());
    return warnings;
  }
}
