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

  static final double WIDEST = 100;
  static final double DEEPEST = 1;
  private static final double DAY = 24 * 3600;

  private static final Place ROOT = Place.root();

  private final Findings findings;

  PourCheckRanges(Findings findings) {
    this.findings = findings;
  }

  void check(PourCheckRequest request) {
    positive(request.volume(), "volume");
    positive(request.frontWidth(), "frontWidth");
    positive(request.depth(), "depth");
    most(request.frontWidth(), WIDEST, Dimension.PLAN, "frontWidth");
    most(request.depth(), DEEPEST, Dimension.HEIGHT, "depth");
    request.workingTime().ifPresent(time -> time(time, "workingTime"));
    request.healingTime().ifPresent(time -> time(time, "healingTime"));
    crew(request.crew());
    request.conditions().ifPresent(this::conditions);
  }

  private void time(double told, String name) {
    positive(told, name);
    most(told, DAY, Dimension.TIME, name);
  }

  private void positive(double told, String name) {
    if (!(told > 0)) {
      findings.error("not-positive", ROOT.at(name), "name", name);
    }
  }

  private void most(double told, double most, Dimension dimension, String name) {
    if (told > most) {
      findings.error(
          "out-of-range",
          ROOT.at(name),
          "name",
          name,
          "told",
          Amount.of(told, dimension),
          "from",
          Amount.of(0, dimension),
          "to",
          Amount.of(most, dimension));
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
