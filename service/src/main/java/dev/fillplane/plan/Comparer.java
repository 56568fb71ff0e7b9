package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.FindingsException;
import dev.fillplane.finding.Place;
import dev.fillplane.pour.Verdict;
import dev.fillplane.target.Prices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Plans a request and variations of it and puts them side by side: pours that hold or are tight
 * before those that break, then the least by the caller's measure, then those without that measure,
 * last what cannot be planned at all. What is equal stays in the order of the request.
 */
public final class Comparer {

  private Comparer() {}

  /**
   * Compares.
   *
   * @throws FindingsException if names are told twice, or costs are wanted of requests without
   *     prices or with prices of different currencies
   */
  public static Comparison compare(PlanRequest base, List<Variation> variations, ComparedBy by) {
    Findings findings = new Findings();
    Variation.checkNames(variations, Place.root().at("variations"), findings);
    if (by == ComparedBy.COST) {
      checkPrices(base, variations, findings);
    }
    findings.throwIfErrors();
    List<ComparisonRow> others = new ArrayList<>();
    ComparisonRow first = row(new Variation(Variation.BASE, base));
    variations.forEach(variation -> others.add(row(variation)));
    others.sort(order(by));
    others.add(0, first);
    return new Comparison(by, others);
  }

  /** Amounts of two currencies have no order. */
  private static void checkPrices(PlanRequest base, List<Variation> variations, Findings findings) {
    Set<Optional<String>> currencies =
        Stream.concat(Stream.of(base), variations.stream().map(Variation::request))
            .flatMap(request -> request.target().prices().stream())
            .map(Prices::currency)
            .collect(Collectors.toSet());
    if (currencies.isEmpty()) {
      findings.error("cost-needs-prices", Place.root().at("by"));
    } else if (currencies.size() > 1) {
      findings.error("currencies-differ", Place.root().at("by"));
    }
  }

  private static ComparisonRow row(Variation variation) {
    try {
      Plan plan = Planner.plan(variation.request(), new Computed("", "", List.of()));
      return ComparisonRow.of(variation.name(), variation.request(), plan);
    } catch (FindingsException e) {
      return ComparisonRow.failed(variation.name(), e.errors());
    }
  }

  private static Comparator<ComparisonRow> order(ComparedBy by) {
    return Comparator.comparing((ComparisonRow row) -> row.verdict().isEmpty())
        .thenComparing(row -> row.verdict().equals(Optional.of(Verdict.BREAKS)))
        .thenComparing(row -> row.measure(by).isEmpty())
        .thenComparingDouble(row -> row.measure(by).orElse(0));
  }
}
