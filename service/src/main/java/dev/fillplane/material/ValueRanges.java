package dev.fillplane.material;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * Whether the told values of a sheet can be amounts, times and temperatures of a sheet at all. The
 * ranges are wider than any sheet; they keep slips of unit, and work without end, out.
 */
final class ValueRanges {

  private static final double MINUTE = 60;
  private static final double DAY = 86_400;

  private final Place place;
  private final Findings findings;
  private boolean right = true;

  private ValueRanges(Place place, Findings findings) {
    this.place = place;
    this.findings = findings;
  }

  /** Notes every value outside its range; a minimum lift of 0 is a feather edge. */
  static boolean check(MaterialWish wish, Place place, Findings findings) {
    ValueRanges ranges = new ValueRanges(place, findings);
    ranges.checkBag(wish);
    ranges.checkLayer(wish);
    wish.aggregate().ifPresent(ranges::checkAggregate);
    ranges.checkTimes(wish);
    ranges.checkTemperatures(wish);
    return ranges.right;
  }

  private void checkBag(MaterialWish wish) {
    positive(wish.bagMass(), "bagMass", 0.1, 2000, Dimension.MASS);
    positive(wish.waterPerBag(), "waterPerBag", 1e-5, 1, Dimension.LIQUID);
    wish.waterRange()
        .ifPresent(
            range -> {
              positive(OptionalDouble.of(range.from()), "waterRange", 1e-5, 1, Dimension.LIQUID);
              positive(OptionalDouble.of(range.to()), "waterRange", 1e-5, 1, Dimension.LIQUID);
            });
    positive(wish.yieldPerBag(), "yieldPerBag", 1e-5, 2, Dimension.FILL);
    positive(wish.wetDensity(), "wetDensity", 200, 5000, Dimension.DENSITY);
  }

  private void checkLayer(MaterialWish wish) {
    notNegative(wish.minimumLift(), "minimumLift", 0.5, Dimension.HEIGHT);
    positive(wish.maximumLift(), "maximumLift", 0.0005, 0.5, Dimension.HEIGHT);
    positive(wish.primerCoverage(), "primerCoverage", 100, 100_000, Dimension.COVERAGE);
  }

  private void checkAggregate(Aggregate aggregate) {
    ValueRanges ranges = new ValueRanges(place.at("aggregate"), findings);
    OptionalDouble depth = OptionalDouble.of(aggregate.minimumDepth());
    OptionalDouble density = OptionalDouble.of(aggregate.grainDensity());
    ranges.positive(depth, "minimumDepth", 0.0005, 0.5, Dimension.HEIGHT);
    ranges.notNegative(OptionalDouble.of(aggregate.neatCap()), "neatCap", 0.5, Dimension.HEIGHT);
    ranges.positive(density, "grainDensity", 500, 5000, Dimension.DENSITY);
    right &= ranges.right;
  }

  private void checkTimes(MaterialWish wish) {
    positive(wish.workingTime(), "workingTime", MINUTE / 2, DAY, Dimension.TIME);
    positive(wish.healingTime(), "healingTime", MINUTE / 4, DAY, Dimension.TIME);
    positive(wish.mixTime(), "mixTime", 1, 120 * MINUTE, Dimension.TIME);
    positive(wish.walkOn(), "walkOn", MINUTE, 365 * DAY, Dimension.TIME);
    positive(wish.coveringAfter(), "coveringAfter", MINUTE, 365 * DAY, Dimension.TIME);
  }

  private void checkTemperatures(MaterialWish wish) {
    plausible(wish.workingTimeAt(), "workingTimeAt");
    wish.temperatureRange()
        .ifPresent(
            range -> {
              plausible(OptionalDouble.of(range.from()), "temperatureRange");
              plausible(OptionalDouble.of(range.to()), "temperatureRange");
            });
  }

  /** No cement works below 0 C or above 60 C. */
  private void plausible(OptionalDouble value, String name) {
    if (value.isPresent() && !(value.getAsDouble() >= 0 && value.getAsDouble() <= 60)) {
      error(
          "sheet-temperature-implausible",
          name,
          "temperature",
          Amount.of(value.getAsDouble(), Dimension.TEMPERATURE),
          "from",
          Amount.of(0, Dimension.TEMPERATURE),
          "to",
          Amount.of(60, Dimension.TEMPERATURE));
    }
  }

  private void positive(
      OptionalDouble value, String name, double least, double most, Dimension dimension) {
    if (value.isPresent() && !(value.getAsDouble() > 0)) {
      error("not-positive", name, "name", name);
    } else {
      within(value, name, least, most, dimension);
    }
  }

  private void notNegative(OptionalDouble value, String name, double most, Dimension dimension) {
    if (value.isPresent() && value.getAsDouble() < 0) {
      error("negative", name, "name", name);
    } else {
      within(value, name, 0, most, dimension);
    }
  }

  private void within(
      OptionalDouble value, String name, double least, double most, Dimension dimension) {
    if (value.isPresent() && !(value.getAsDouble() >= least && value.getAsDouble() <= most)) {
      error(
          "out-of-range",
          name,
          "name",
          name,
          "told",
          Amount.of(value.getAsDouble(), dimension),
          "from",
          Amount.of(least, dimension),
          "to",
          Amount.of(most, dimension));
    }
  }

  private void error(String code, String name, Object... namesAndValues) {
    findings.error(code, place.at(name), namesAndValues);
    right = false;
  }
}
