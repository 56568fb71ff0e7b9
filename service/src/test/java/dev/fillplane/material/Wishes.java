package dev.fillplane.material;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Builds what a caller tells about a material, for tests. */
final class Wishes {

  private final Map<String, Double> told = new HashMap<>();
  private Optional<String> id = Optional.empty();
  private Optional<WaterRange> water = Optional.empty();
  private Optional<Aggregate> aggregate = Optional.empty();
  private Optional<TemperatureRange> temperatures = Optional.empty();

  /** A bag of 25 kg with 5 L of water that makes 15 L. */
  static Wishes bag() {
    return new Wishes().tell("bagMass", 25).tell("waterPerBag", 0.005).tell("yieldPerBag", 0.015);
  }

  static Wishes of(String id) {
    Wishes wishes = new Wishes();
    wishes.id = Optional.of(id);
    return wishes;
  }

  Wishes tell(String name, double value) {
    told.put(name, value);
    return this;
  }

  Wishes without(String name) {
    told.remove(name);
    return this;
  }

  Wishes water(double from, double to) {
    water = Optional.of(new WaterRange(from, to));
    return this;
  }

  Wishes aggregate(Aggregate told) {
    aggregate = Optional.of(told);
    return this;
  }

  Wishes temperatures(double from, double to) {
    temperatures = Optional.of(new TemperatureRange(from, to));
    return this;
  }

  MaterialWish wish() {
    return new MaterialWish(
        id,
        Optional.empty(),
        value("bagMass"),
        value("waterPerBag"),
        water,
        value("yieldPerBag"),
        value("wetDensity"),
        value("minimumLift"),
        value("maximumLift"),
        aggregate,
        value("workingTime"),
        value("healingTime"),
        value("workingTimeAt"),
        temperatures,
        value("mixTime"),
        value("primerCoverage"),
        value("walkOn"),
        value("coveringAfter"));
  }

  private OptionalDouble value(String name) {
    return told.containsKey(name) ? OptionalDouble.of(told.get(name)) : OptionalDouble.empty();
  }
}
