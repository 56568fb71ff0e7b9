package dev.fillplane.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.material.MaterialWish;
import dev.fillplane.material.StatedTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The usual sheet with other times, or with another activation energy. */
final class SheetsOfTwoTimes {

  private static final OptionalDouble NONE = OptionalDouble.empty();

  private SheetsOfTwoTimes() {}

  static DataSheet sheet(double time, double at, double second, double secondAt) {
    StatedTime stated = new StatedTime(second, secondAt);
    return sheet(OptionalDouble.of(time), OptionalDouble.of(at), NONE, Optional.of(stated));
  }

  static DataSheet sheet(double activationEnergy) {
    return sheet(NONE, NONE, OptionalDouble.of(activationEnergy), Optional.empty());
  }

  private static DataSheet sheet(
      OptionalDouble time, OptionalDouble at, OptionalDouble energy, Optional<StatedTime> second) {
    MaterialWish wish =
        new MaterialWish(
            Catalogue.usual().id(),
            Optional.empty(),
            NONE,
            NONE,
            Optional.empty(),
            NONE,
            NONE,
            NONE,
            NONE,
            Optional.empty(),
            time,
            NONE,
            at,
            Optional.empty(),
            NONE,
            NONE,
            NONE,
            NONE,
            energy,
            second);
    Findings findings = new Findings();
    DataSheet sheet = Catalogue.resolve(wish, Place.root(), findings);
    assertEquals(List.of(), findings.errors());
    return sheet;
  }
}
