package dev.fillplane.material;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;

/** Whether the values of a sheet agree with one another. */
final class SheetChecks {

  /** Yield told and yield by mass balance may differ by this share: air, rounding of the sheet. */
  private static final double YIELD_TOLERANCE = 0.05;

  /** Water to powder by mass; levellers take 0.18 to 0.26 (common practice, no source). */
  private static final double LEAST_WATER_RATIO = 0.1;

  private static final double MOST_WATER_RATIO = 0.5;

  /** Wet levellers have 1950 to 2150 (common practice, no source); beyond these it is odd. */
  private static final double LEAST_DENSITY = 1600;

  private static final double MOST_DENSITY = 2400;

  /** Room for the last digits after a conversion of units. */
  private static final double ROUNDING = 1e-9;

  private final MaterialWish wish;
  private final DataSheet sheet;
  private final Place place;
  private final Findings findings;

  SheetChecks(MaterialWish wish, DataSheet sheet, Place place, Findings findings) {
    this.wish = wish;
    this.sheet = sheet;
    this.place = place;
    this.findings = findings;
  }

  void check() {
    checkWater();
    checkYield();
    checkLifts();
    sheet.aggregate().ifPresent(this::checkAggregate);
    checkTimes();
    checkTemperatures();
  }

  private void checkWater() {
    WaterRange range = sheet.waterRange();
    double water = sheet.waterPerBag();
    if (range.from() > range.to()) {
      findings.error("range-upside-down", place.at("waterRange"));
    } else if (water < range.from() * (1 - ROUNDING) || water > range.to() * (1 + ROUNDING)) {
      findings.error(
          "water-outside-sheet",
          wish.waterPerBag().isPresent() ? place.at("waterPerBag") : place.at("waterRange"),
          "water",
          Amount.of(water, Dimension.LIQUID),
          "from",
          Amount.of(range.from(), Dimension.LIQUID),
          "to",
          Amount.of(range.to(), Dimension.LIQUID));
    }
    double ratio = MassBalance.WATER_DENSITY * water / sheet.bagMass();
    if (ratio < LEAST_WATER_RATIO * (1 - ROUNDING) || ratio > MOST_WATER_RATIO * (1 + ROUNDING)) {
      findings.error(
          "water-powder-ratio",
          place.at("waterPerBag"),
          "percent",
          (int) Math.round(Math.min(100 * ratio, Integer.MAX_VALUE)));
    }
  }

  private void checkYield() {
    if (wish.yieldPerBag().isPresent() && wish.wetDensity().isPresent()) {
      checkYieldAgainstDensity(wish.yieldPerBag().getAsDouble(), wish.wetDensity().getAsDouble());
    }
    double density = sheet.wetDensity();
    if (density < LEAST_DENSITY || density > MOST_DENSITY) {
      findings.warning(
          "sheet-density-odd",
          wish.yieldPerBag().isPresent() ? place.at("yieldPerBag") : place.at("wetDensity"),
          "density",
          Amount.of(density, Dimension.DENSITY));
    }
  }

  private void checkYieldAgainstDensity(double told, double density) {
    double balanced = MassBalance.volume(sheet.bagMass(), sheet.waterPerBag(), density);
    if (Math.abs(told - balanced) > YIELD_TOLERANCE * balanced * (1 + ROUNDING)) {
      findings.error(
          "sheet-yield-contradicts-density",
          place.at("yieldPerBag"),
          "told",
          Amount.of(told, Dimension.FILL),
          "balanced",
          Amount.of(balanced, Dimension.FILL));
    }
  }

  private void checkLifts() {
    if (sheet.minimumLift() > sheet.maximumLift()) {
      findings.error(
          "lift-range-upside-down",
          wish.minimumLift().isPresent() ? place.at("minimumLift") : place.at("maximumLift"),
          "minimum",
          Amount.of(sheet.minimumLift(), Dimension.HEIGHT),
          "maximum",
          Amount.of(sheet.maximumLift(), Dimension.HEIGHT));
    }
  }

  private void checkAggregate(Aggregate aggregate) {
    if (aggregate.shareFrom() > aggregate.shareTo()) {
      findings.error("range-upside-down", place.at("aggregate"));
    }
    if (aggregate.neatCap() >= aggregate.minimumDepth()) {
      findings.error(
          "aggregate-cap-too-thick",
          place.at("aggregate").at("neatCap"),
          "cap",
          Amount.of(aggregate.neatCap(), Dimension.HEIGHT),
          "depth",
          Amount.of(aggregate.minimumDepth(), Dimension.HEIGHT));
    }
  }

  private void checkTimes() {
    if (sheet.healingTime() > sheet.workingTime() * (1 + ROUNDING)) {
      findings.error(
          "healing-above-working",
          place.at("healingTime"),
          "healing",
          Amount.of(sheet.healingTime(), Dimension.TIME),
          "working",
          Amount.of(sheet.workingTime(), Dimension.TIME));
    }
  }

  private void checkTemperatures() {
    if (sheet.temperatureRange().from() > sheet.temperatureRange().to()) {
      findings.error("range-upside-down", place.at("temperatureRange"));
    }
  }
}
