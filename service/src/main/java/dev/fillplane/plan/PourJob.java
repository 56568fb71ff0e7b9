package dev.fillplane.plan;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.finding.Remark;
import dev.fillplane.heat.Mix;
import dev.fillplane.heat.MixPlan;
import dev.fillplane.heat.Site;
import dev.fillplane.heat.WorkingTime;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.pour.Crew;
import dev.fillplane.pour.Effort;
import dev.fillplane.pour.Healing;
import dev.fillplane.pour.OtherPour;
import dev.fillplane.pour.Pour;
import dev.fillplane.pour.PourPlanner;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.supply.BagOdds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * A floor to be poured by a crew on a day, with the other ways in which they could pour it: cooler
 * water, a floor no warmer than the air, a slower material.
 *
 * @param site the day
 * @param crew who pours
 * @param area what is poured on
 * @param volume what is poured
 * @param mean depth; a negative one counts as none
 * @param thinnest depth
 * @param deepest depth
 * @param bays cuts the floor for a sheet with the yield that is planned
 */
record PourJob(
    Site site,
    Crew crew,
    double area,
    double volume,
    double mean,
    double thinnest,
    double deepest,
    Function<DataSheet, BayPlan> bays) {

  /** A floor is shaded if it is warmer than the air by more than this. */
  private static final double WARMER = 0.5;

  /** The sheet with what a bag adds to the volume that is planned. */
  DataSheet asPoured(DataSheet sheet) {
    return sheet.yielding(BagOdds.planned(volume, area, sheet));
  }

  /** The pour of bays that are cut for a sheet as poured. */
  Pour pour(BayPlan cut, DataSheet sheet, Mix mix) {
    return PourPlanner.plan(cut, sheet, crew, healing(sheet, mix), others(cut, sheet, mix));
  }

  /** How long edges heal on this site. */
  Healing healing(DataSheet sheet, Mix mix) {
    return healing(mix.healingTime(), mix.mixTemperature(), site.floor(), sheet);
  }

  private Healing healing(double time, double mix, double floor, DataSheet sheet) {
    double hottest = Math.max(site.air(), Math.max(floor, mix));
    return new Healing(time, hottest <= sheet.temperatureRange().to());
  }

  /** The other ways, the least of each effort first. */
  List<OtherPour> others(BayPlan cut, DataSheet sheet, Mix mix) {
    List<OtherPour> others = new ArrayList<>();
    double told = site.water();
    mix.needed().waterTemperature().stream()
        .filter(water -> water < told)
        .forEach(water -> others.add(coolerWater(water, cut, sheet)));
    if (site.floor() > site.air() + WARMER) {
      others.add(shade(cut, sheet, mix));
    }
    others.addAll(slower(sheet, mix));
    return others;
  }

  /** The water that brings the mix to the temperature of the sheet's time. */
  private OtherPour coolerWater(double water, BayPlan cut, DataSheet sheet) {
    double cool = sheet.workingTimeAt();
    double time = WorkingTime.of(sheet).healingTime(cool, site.floor(), depth());
    Remark remark =
        Remark.of("cooler-water", "temperature", Amount.of(water, Dimension.TEMPERATURE));
    Healing healing = healing(time, cool, site.floor(), sheet);
    return new OtherPour(Effort.SMALL, remark, "cooler-water-and-crew", () -> cut, sheet, healing);
  }

  private OtherPour shade(BayPlan cut, DataSheet sheet, Mix mix) {
    double time = WorkingTime.of(sheet).healingTime(mix.mixTemperature(), site.air(), depth());
    Remark remark =
        Remark.of("shade-or-night", "temperature", Amount.of(site.air(), Dimension.TEMPERATURE));
    Healing healing = healing(time, mix.mixTemperature(), site.air(), sheet);
    return new OtherPour(
        Effort.SMALL, remark, "shade-or-night-and-crew", () -> cut, sheet, healing);
  }

  /** The next slower material of the catalogue and the slowest, of the same binder. */
  private List<OtherPour> slower(DataSheet sheet, Mix mix) {
    List<OtherPour> slower =
        Catalogue.sheets().stream()
            .filter(other -> other.binder() == sheet.binder() && takes(other))
            .map(this::with)
            .filter(other -> other.healing().time() > mix.healingTime())
            .sorted(Comparator.comparingDouble(other -> other.healing().time()))
            .toList();
    return slower.size() > 2 ? List.of(slower.get(0), slower.get(slower.size() - 1)) : slower;
  }

  private boolean takes(DataSheet other) {
    return other.minimumLift() <= thinnest && deepest <= other.maximumLift();
  }

  private OtherPour with(DataSheet other) {
    Mix mix = MixPlan.of(other, site, mean, crew.bagsPerBatch(), Place.root(), new Findings());
    DataSheet poured = asPoured(other);
    Remark remark =
        Remark.of(
            "slower-material",
            "material",
            other.id().orElseThrow(),
            "healing",
            Amount.of(mix.healingTime(), Dimension.TIME));
    return new OtherPour(
        Effort.LARGE,
        remark,
        "slower-material-and-crew",
        () -> bays.apply(poured),
        poured,
        healing(poured, mix));
  }

  private double depth() {
    return Math.max(0, mean);
  }
}
