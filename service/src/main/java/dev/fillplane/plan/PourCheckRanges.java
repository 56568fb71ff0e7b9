package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.heat.Conditions;
import dev.fillplane.pour.Crew;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.OptionalDouble;

/** The ranges of a pour in bare numbers; crew and day have those of a plan. */
final class PourCheckRanges {

  static final double NARROWEST = 0.01;
  static final double WIDEST = 100;
  static final double DEEPEST = 1;
  private static final double DAY = 24 * 3600;

  /** Floors of a plan are as large, m2. */
  private static final double SMALLEST_FLOOR = 0.01;

  private static final double LARGEST_FLOOR = 10_000;

  private static final Place ROOT = Place.root();

  private final Findings findings;

  PourCheckRanges(Findings findings) {
    this.findings = findings;
  }

  void check(PourCheckRequest request) {
    positive(request.volume(), "volume");
    positive(request.frontWidth(), "frontWidth");
    positive(request.depth(), "depth");
    range(request.frontWidth(), NARROWEST, WIDEST, Dimension.PLAN, "frontWidth");
    range(request.depth(), 0, DEEPEST, Dimension.HEIGHT, "depth");
    if (request.volume() > 0 && request.depth() > 0) {
      floor(request.volume() / request.depth());
    }
    request.workingTime().ifPresent(time -> time(time, "workingTime"));
    request.healingTime().ifPresent(time -> time(time, "healingTime"));
    crew(request.crew());
    request.conditions().ifPresent(this::conditions);
  }

  private void time(double told, String name) {
    positive(told, name);
    range(told, 0, DAY, Dimension.TIME, name);
  }

  private void floor(double area) {
    if (area < SMALLEST_FLOOR || area > LARGEST_FLOOR) {
      findings.error(
          "floor-out-of-range",
          ROOT.at("volume"),
          "area",
          Amount.of(area, Dimension.AREA),
          "from",
          Amount.of(SMALLEST_FLOOR, Dimension.AREA),
          "to",
          Amount.of(LARGEST_FLOOR, Dimension.AREA));
    }
  }

  private void positive(double told, String name) {
    if (!(told > 0)) {
      findings.error("not-positive", ROOT.at(name), "name", name);
    }
  }

  /** What is not positive was told already. */
  private void range(double told, double from, double to, Dimension dimension, String name) {
    if ((told > 0 && told < from) || told > to) {
      findings.error(
          "out-of-range",
          ROOT.at(name),
          "name",
          name,
          "told",
          Amount.of(told, dimension),
          "from",
          Amount.of(from, dimension),
          "to",
          Amount.of(to, dimension));
    }
  }

  private void crew(Crew crew) {
    term("crew/carryDistance", OptionalDouble.of(crew.carryDistance()));
    term("crew/waterTime", OptionalDouble.of(crew.waterTime()));
    term("crew/mixTime", crew.mixTime());
    term("crew/betweenBays", OptionalDouble.of(crew.betweenBays()));
  }

  private void conditions(Conditions day) {
    term("conditions/air", day.air());
    term("conditions/floor", day.floor());
    term("conditions/powder", day.powder());
    term("conditions/water", day.water());
    term("conditions/airspeed", day.airspeed());
    term("conditions/mixingHeat", day.mixingHeat());
  }

  private void term(String path, OptionalDouble told) {
    told.ifPresent(value -> Terms.check(path, path, value, findings));
  }
}
