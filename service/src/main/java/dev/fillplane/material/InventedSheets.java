package dev.fillplane.material;

import java.util.List;
import java.util.Optional;

/** The invented sheets of the catalogue; yields by mass balance. */
final class InventedSheets {

  private static final double POUND = 0.45359237;
  private static final double US_QUART = 231 * 0.0254 * 0.0254 * 0.0254 / 4;
  private static final double LITRE = 1e-3;
  private static final double MILLIMETRE = 1e-3;
  private static final double MINUTE = 60;
  private static final double HOUR = 3600;

  private InventedSheets() {}

  static List<DataSheet> all() {
    return List.of(
        cement(
            "cement-standard-25", bag(25, 5.0 * LITRE, 2000), layer(3, 30), times(15, 20, 3, 24)),
        cement("cement-rapid-25", bag(25, 5.25 * LITRE, 2000), layer(3, 20), times(10, 20, 2, 16)),
        cement(
            "cement-deep-25",
            bag(25, 4.75 * LITRE, 2050),
            stretchable(5, 60),
            times(20, 20, 4, 48)),
        cement("cement-thin-25", bag(25, 5.5 * LITRE, 1980), layer(0, 10), times(20, 20, 2, 16)),
        cement(
            "cement-standard-50lb",
            bag(50 * POUND, 6 * US_QUART, 2010),
            stretchable(3, 38),
            times(12, 23, 3, 24)),
        sheet(
            "gypsum-standard-25",
            Binder.GYPSUM,
            bag(25, 5.5 * LITRE, 2000),
            layer(5, 40),
            times(20, 20, 4, 72)));
  }

  private record Bag(double mass, double water, double wetDensity) {}

  private record Layer(double minimum, double maximum, Optional<Aggregate> aggregate) {}

  private record Times(double working, double at, double walkOn, double covering) {}

  private static Bag bag(double mass, double water, double wetDensity) {
    return new Bag(mass, water, wetDensity);
  }

  private static Layer layer(double minimumMillimetres, double maximumMillimetres) {
    return new Layer(
        minimumMillimetres * MILLIMETRE, maximumMillimetres * MILLIMETRE, Optional.empty());
  }

  /** Of a sheet that allows aggregate. */
  private static Layer stretchable(double minimumMillimetres, double maximumMillimetres) {
    return new Layer(
        minimumMillimetres * MILLIMETRE,
        maximumMillimetres * MILLIMETRE,
        Optional.of(Aggregate.usual()));
  }

  private static Times times(
      double workingMinutes, double at, double walkOnHours, double coveringHours) {
    return new Times(workingMinutes * MINUTE, at, walkOnHours * HOUR, coveringHours * HOUR);
  }

  private static DataSheet cement(String id, Bag bag, Layer layer, Times times) {
    return sheet(id, Binder.CEMENT, bag, layer, times);
  }

  private static DataSheet sheet(String id, Binder binder, Bag bag, Layer layer, Times times) {
    return new DataSheet(
        Optional.of(id),
        binder,
        bag.mass,
        bag.water,
        WaterRange.around(bag.water),
        MassBalance.volume(bag.mass, bag.water, bag.wetDensity),
        bag.wetDensity,
        layer.minimum,
        layer.maximum,
        layer.aggregate,
        times.working,
        SheetDefaults.HEALING_SHARE * times.working,
        times.at,
        SheetDefaults.TEMPERATURE_RANGE,
        SheetDefaults.MIX_TIME,
        SheetDefaults.PRIMER_COVERAGE,
        times.walkOn,
        times.covering);
  }
}
