package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.DataSheet;
import dev.fillplane.pour.Break;
import dev.fillplane.pour.Crew;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;

/** Whether a crew can work as it is told to. */
final class CrewCheck {

  private static final double DAY = 24 * 3600;

  private CrewCheck() {}

  /** Notes errors of a crew at {@code place}. */
  static void check(Crew crew, DataSheet sheet, Place place, Findings findings) {
    if (crew.mixTime().isPresent() && crew.mixTime().getAsDouble() < sheet.mixTime()) {
      findings.error(
          "mixed-too-short",
          place.at("mixTime"),
          "told",
          time(crew.mixTime().getAsDouble()),
          "sheet",
          time(sheet.mixTime()));
    }
    if (crew.preFilled() > crew.barrels()) {
      findings.error(
          "more-filled-than-barrels",
          place.at("preFilled"),
          "filled",
          crew.preFilled(),
          "barrels",
          crew.barrels());
    }
    for (int i = 0; i < crew.breaks().size(); i++) {
      Break one = crew.breaks().get(i);
      checkTime("start of a break", one.at(), place.at("breaks").at(i).at("at"), findings);
      checkTime("length of a break", one.length(), place.at("breaks").at(i).at("length"), findings);
    }
  }

  private static void checkTime(String name, double told, Place place, Findings findings) {
    if (told < 0 || told > DAY) {
      findings.error(
          "out-of-range",
          place,
          "name",
          name,
          "told",
          time(told),
          "from",
          time(0),
          "to",
          time(DAY));
    }
  }

  private static Amount time(double seconds) {
    return Amount.of(seconds, Dimension.TIME);
  }
}
