package dev.fillplane.material;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.OptionalDouble;

/** Whether the told values of a sheet can be amounts and temperatures of a sheet at all. */
final class ValueSigns {

  /** No cement works outside these temperatures. */
  private static final double COLDEST = 0;

  private static final double HOTTEST = 60;

  private final Place place;
  private final Findings findings;
  private boolean right = true;

  private ValueSigns(Place place, Findings findings) {
    this.place = place;
    this.findings = findings;
  }

  /** Notes every value that is not positive; a minimum lift of 0 is a feather edge. */
  static boolean check(MaterialWish wish, Place place, Findings findings) {
    ValueSigns signs = new ValueSigns(place, findings);
    signs.positive(wish.bagMass(), "bagMass");
    signs.positive(wish.waterPerBag(), "waterPerBag");
    wish.waterRange()
        .ifPresent(range -> signs.positive(OptionalDouble.of(range.from()), "waterRange"));
    signs.positive(wish.yieldPerBag(), "yieldPerBag");
    signs.positive(wish.wetDensity(), "wetDensity");
    signs.notNegative(wish.minimumLift(), "minimumLift");
    signs.positive(wish.maximumLift(), "maximumLift");
    signs.positive(wish.workingTime(), "workingTime");
    signs.positive(wish.healingTime(), "healingTime");
    signs.positive(wish.mixTime(), "mixTime");
    signs.positive(wish.primerCoverage(), "primerCoverage");
    signs.positive(wish.walkOn(), "walkOn");
    signs.positive(wish.coveringAfter(), "coveringAfter");
    signs.plausible(wish.workingTimeAt(), "workingTimeAt");
    wish.temperatureRange()
        .ifPresent(
            range -> {
              signs.plausible(OptionalDouble.of(range.from()), "temperatureRange");
              signs.plausible(OptionalDouble.of(range.to()), "temperatureRange");
            });
    return signs.right;
  }

  private void positive(OptionalDouble value, String name) {
    if (value.isPresent() && !(value.getAsDouble() > 0)) {
      findings.error("not-positive", place.at(name), "name", name);
      right = false;
    }
  }

  private void notNegative(OptionalDouble value, String name) {
    if (value.isPresent() && !(value.getAsDouble() >= 0)) {
      findings.error("negative", place.at(name), "name", name);
      right = false;
    }
  }

  private void plausible(OptionalDouble value, String name) {
    if (value.isPresent() && !(value.getAsDouble() >= COLDEST && value.getAsDouble() <= HOTTEST)) {
      findings.error(
          "sheet-temperature-implausible",
          place.at(name),
          "temperature",
          Amount.of(value.getAsDouble(), Dimension.TEMPERATURE),
          "from",
          Amount.of(COLDEST, Dimension.TEMPERATURE),
          "to",
          Amount.of(HOTTEST, Dimension.TEMPERATURE));
      right = false;
    }
  }
}
