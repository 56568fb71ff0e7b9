package dev.fillplane.material;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes one sheet of one wish: base, told values, defaults. */
final class SheetMaker {

  private final MaterialWish wish;
  private final Place place;
  private final Findings findings;

  SheetMaker(MaterialWish wish, Place place, Findings findings) {
    this.wish = wish;
    this.place = place;
    this.findings = findings;
  }

  /** The sheet; of no use where it left errors. */
  DataSheet make() {
    Optional<DataSheet> base = wish.id().flatMap(Catalogue::find);
    boolean known = wish.id().isEmpty() ? complete() : known(base);
    boolean rangesRight = ValueRanges.check(wish, place, findings);
    if (!known || !rangesRight) {
      return Catalogue.usual();
    }
    DataSheet sheet = fill(base);
    new SheetChecks(wish, sheet, place, findings).check();
    return sheet;
  }

  private boolean known(Optional<DataSheet> base) {
    if (base.isEmpty()) {
      List<String> ids = Catalogue.sheets().stream().flatMap(s -> s.id().stream()).toList();
      findings.error(
          "unknown-material",
          place.at("id"),
          "id",
          wish.id().orElseThrow(),
          "known",
          String.join(", ", ids));
    }
    return base.isPresent();
  }

  /** Whether a wish without an id tells enough for a mass balance. */
  private boolean complete() {
    boolean bag = told(wish.bagMass(), "bagMass");
    boolean water = told(wish.waterPerBag(), "waterPerBag");
    boolean fill =
        wish.yieldPerBag().isPresent() || told(wish.wetDensity(), "yieldPerBag or wetDensity");
    return bag && water && fill;
  }

  private boolean told(OptionalDouble value, String name) {
    if (value.isEmpty()) {
      findings.error("sheet-value-missing", place, "name", name);
    }
    return value.isPresent();
  }

  private DataSheet fill(Optional<DataSheet> base) {
    double bagMass = wish.bagMass().orElseGet(() -> base.orElseThrow().bagMass());
    double scale = base.map(sheet -> bagMass / sheet.bagMass()).orElse(1.0);
    double water = wish.waterPerBag().orElseGet(() -> scale * base.orElseThrow().waterPerBag());
    double fill = yieldPerBag(bagMass, water, base);
    double working = workingTime(base);
    return new DataSheet(
        wish.id(),
        wish.binder().or(() -> base.map(DataSheet::binder)).orElse(Binder.CEMENT),
        bagMass,
        water,
        wish.waterRange()
            .or(() -> base.map(sheet -> sheet.waterRange().times(scale)))
            .orElseGet(() -> WaterRange.around(water)),
        fill,
        MassBalance.wetDensity(bagMass, water, fill),
        or(wish.minimumLift(), base.map(DataSheet::minimumLift), minimumLift()),
        or(wish.maximumLift(), base.map(DataSheet::maximumLift), maximumLift()),
        wish.aggregate().or(() -> base.flatMap(DataSheet::aggregate)),
        working,
        healingTime(base, working),
        or(wish.workingTimeAt(), base.map(DataSheet::workingTimeAt), SheetDefaults.WORKING_TIME_AT),
        wish.temperatureRange()
            .or(() -> base.map(DataSheet::temperatureRange))
            .orElse(SheetDefaults.TEMPERATURE_RANGE),
        or(wish.mixTime(), base.map(DataSheet::mixTime), SheetDefaults.MIX_TIME),
        or(
            wish.primerCoverage(),
            base.map(DataSheet::primerCoverage),
            SheetDefaults.PRIMER_COVERAGE),
        or(wish.walkOn(), base.map(DataSheet::walkOn), SheetDefaults.WALK_ON),
        or(wish.coveringAfter(), base.map(DataSheet::coveringAfter), SheetDefaults.COVERING_AFTER));
  }

  /** The default, but never above what is told as the maximum. */
  private double minimumLift() {
    return Math.min(
        SheetDefaults.MINIMUM_LIFT, wish.maximumLift().orElse(SheetDefaults.MINIMUM_LIFT));
  }

  /** The default, but never below what is told as the minimum. */
  private double maximumLift() {
    return Math.max(
        SheetDefaults.MAXIMUM_LIFT, wish.minimumLift().orElse(SheetDefaults.MAXIMUM_LIFT));
  }

  private static double or(OptionalDouble told, Optional<Double> base, double usual) {
    return told.orElseGet(() -> base.orElse(usual));
  }

  /** As told, else by mass balance with the density told or that of the base. */
  private double yieldPerBag(double bagMass, double water, Optional<DataSheet> base) {
    if (wish.yieldPerBag().isPresent()) {
      return wish.yieldPerBag().getAsDouble();
    }
    double density = wish.wetDensity().orElseGet(() -> base.orElseThrow().wetDensity());
    return MassBalance.volume(bagMass, water, density);
  }

  private double workingTime(Optional<DataSheet> base) {
    if (wish.workingTime().isPresent() || base.isPresent()) {
      return wish.workingTime().orElseGet(() -> base.orElseThrow().workingTime());
    }
    double assumed =
        wish.healingTime().isPresent()
            ? wish.healingTime().getAsDouble() / SheetDefaults.HEALING_SHARE
            : SheetDefaults.WORKING_TIME;
    findings.warning("working-time-assumed", place, "time", Amount.of(assumed, Dimension.TIME));
    return assumed;
  }

  /** The healing time of the base belongs to its own working time and goes with it. */
  private double healingTime(Optional<DataSheet> base, double working) {
    if (wish.healingTime().isPresent()) {
      return wish.healingTime().getAsDouble();
    }
    if (base.isPresent() && wish.workingTime().isEmpty()) {
      return base.get().healingTime();
    }
    double assumed = SheetDefaults.HEALING_SHARE * working;
    findings.warning("healing-time-assumed", place, "time", Amount.of(assumed, Dimension.TIME));
    return assumed;
  }
}
