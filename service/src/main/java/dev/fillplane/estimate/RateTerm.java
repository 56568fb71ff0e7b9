package dev.fillplane.estimate;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A rate or time of {@link WorkRates} with its usual value and its range, in SI.
 *
 * @param name what it is, in a few words
 * @param property its name in a request
 * @param dimension what it measures
 * @param from least value
 * @param to largest value
 * @param told the value of a request
 */
public record RateTerm(
    String name,
    String property,
    Dimension dimension,
    double from,
    double to,
    ToDoubleFunction<WorkRates> told) {

  private static final double LEAST_RATE = 0.1;
  private static final double MOST_RATE = 10_000;
  private static final double DAY = 24 * 3600;
  private static final double MINUTE = 60;

  private static final List<RateTerm> ALL =
      List.of(
          area("floor blasted in an hour", "blast", WorkRates::blast),
          area("floor primed in an hour", "prime", WorkRates::prime),
          area("floor given a moisture barrier in an hour", "barrier", WorkRates::barrier),
          edge("edge masked in an hour", "mask", WorkRates::mask),
          edge("edge sealed in an hour", "seal", WorkRates::seal),
          edge("crack filled in an hour", "cracks", WorkRates::cracks),
          time("time to set up", "setUp", 0, WorkRates::setUp),
          time("time to wash up", "washUp", 0, WorkRates::washUp),
          time("time of a return visit", "returnVisit", 0, WorkRates::returnVisit),
          time("half day", "halfDay", MINUTE, WorkRates::halfDay));

  /** All of them, in the order of a request. */
  public static List<RateTerm> all() {
    return ALL;
  }

  /** What holds where it is not told. */
  public double usual() {
    return told.applyAsDouble(WorkRates.usual());
  }

  static void check(WorkRates rates, Place place, Findings findings) {
    for (RateTerm term : ALL) {
      double told = term.told.applyAsDouble(rates);
      if (told < term.from || told > term.to) {
        findings.error(
            "out-of-range",
            place.at(term.property),
            "name",
            term.name,
            "told",
            Amount.of(told, term.dimension),
            "from",
            Amount.of(term.from, term.dimension),
            "to",
            Amount.of(term.to, term.dimension));
      }
    }
  }

  private static RateTerm area(String name, String property, ToDoubleFunction<WorkRates> told) {
    return new RateTerm(name, property, Dimension.AREA, LEAST_RATE, MOST_RATE, told);
  }

  private static RateTerm edge(String name, String property, ToDoubleFunction<WorkRates> told) {
    return new RateTerm(name, property, Dimension.PLAN, LEAST_RATE, MOST_RATE, told);
  }

  private static RateTerm time(
      String name, String property, double from, ToDoubleFunction<WorkRates> told) {
    return new RateTerm(name, property, Dimension.TIME, from, DAY, told);
  }
}
