package dev.fillplane.supply;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.Aggregate;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.material.MaterialWish;
import java.util.Optional;
import java.util.OptionalDouble;

/** Variants of the usual sheet. */
final class Sheets {

  private static final OptionalDouble NONE = OptionalDouble.empty();

  private Sheets() {}

  static MaterialWish usual() {
    return wish(Catalogue.usual().id(), NONE, NONE, NONE, NONE, NONE, Optional.empty());
  }

  static MaterialWish bag(double mass, double water, double fill) {
    return wish(
        Optional.empty(),
        OptionalDouble.of(mass),
        OptionalDouble.of(water),
        OptionalDouble.of(fill),
        NONE,
        NONE,
        Optional.empty());
  }

  static DataSheet withLifts(double minimum, double maximum) {
    return Catalogue.resolve(lifts(minimum, maximum), Place.root(), new Findings());
  }

  static MaterialWish lifts(double minimum, double maximum) {
    return wish(
        Catalogue.usual().id(),
        NONE,
        NONE,
        NONE,
        OptionalDouble.of(minimum),
        OptionalDouble.of(maximum),
        Optional.empty());
  }

  /** The usual sheet, 25 kg for 15 L, with another least layer and with aggregate. */
  static DataSheet withAggregate(double minimumLift, Aggregate aggregate) {
    MaterialWish wish =
        wish(
            Catalogue.usual().id(),
            NONE,
            NONE,
            NONE,
            OptionalDouble.of(minimumLift),
            NONE,
            Optional.of(aggregate));
    return Catalogue.resolve(wish, Place.root(), new Findings());
  }

  private static MaterialWish wish(
      Optional<String> id,
      OptionalDouble bagMass,
      OptionalDouble water,
      OptionalDouble fill,
      OptionalDouble minimumLift,
      OptionalDouble maximumLift,
      Optional<Aggregate> aggregate) {
    return new MaterialWish(
        id,
        Optional.empty(),
        bagMass,
        water,
        Optional.empty(),
        fill,
        NONE,
        minimumLift,
        maximumLift,
        aggregate,
        NONE,
        NONE,
        NONE,
        Optional.empty(),
        NONE,
        NONE,
        NONE,
        NONE);
  }
}
