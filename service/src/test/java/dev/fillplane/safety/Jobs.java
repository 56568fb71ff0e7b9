package dev.fillplane.safety;

import dev.fillplane.heat.Site;
import dev.fillplane.material.Binder;
import dev.fillplane.material.DataSheet;
import dev.fillplane.material.TemperatureRange;
import dev.fillplane.material.WaterRange;
import dev.fillplane.pour.Crew;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Invented jobs: 24 bags of 25 kg on 40 m2 of new concrete, in mild air, unless changed. */
final class Jobs {

  private final List<Room> rooms = new ArrayList<>();
  private Binder binder = Binder.CEMENT;
  private double bagMass = 25;
  private double wetDensity = 2000;
  private double mean = 0.009;
  private double deepest = 0.015;
  private double grindArea;
  private double air = 20;
  private Optional<Boolean> ventilated = Optional.of(true);
  private int bags = 24;
  private double pourTime = 2400;
  private int rails;

  static Jobs job() {
    return new Jobs();
  }

  Jobs room(String id, Substrate substrate, int built) {
    rooms.add(room(id, Optional.of(substrate), OptionalInt.of(built)));
    return this;
  }

  Jobs roomOfUnknown(String id) {
    rooms.add(room(id, Optional.empty(), OptionalInt.empty()));
    return this;
  }

  Jobs gypsum() {
    binder = Binder.GYPSUM;
    return this;
  }

  Jobs bagMass(double kilograms) {
    bagMass = kilograms;
    return this;
  }

  Jobs wetDensity(double density) {
    wetDensity = density;
    return this;
  }

  Jobs depths(double meanDepth, double maximumDepth) {
    mean = meanDepth;
    deepest = maximumDepth;
    return this;
  }

  Jobs grind(double area) {
    grindArea = area;
    return this;
  }

  Jobs air(double temperature) {
    air = temperature;
    return this;
  }

  Jobs ventilated(Optional<Boolean> told) {
    ventilated = told;
    return this;
  }

  Jobs bags(int count, double seconds) {
    bags = count;
    pourTime = seconds;
    return this;
  }

  Jobs rails(int count) {
    rails = count;
    return this;
  }

  SafetyInput input() {
    List<Room> all =
        rooms.isEmpty()
            ? List.of(room("hall", Optional.of(Substrate.CONCRETE), OptionalInt.of(2015)))
            : rooms;
    Site conditions = new Site(air, air - 2, air, 15, OptionalDouble.empty(), 0, ventilated);
    return new SafetyInput(
        all,
        bags > 0 ? 40 : 0,
        bags > 0 ? mean : 0,
        bags > 0 ? deepest : 0,
        grindArea,
        sheet(),
        conditions,
        bags,
        pourTime,
        Crew.usual(),
        rails);
  }

  private DataSheet sheet() {
    return new DataSheet(
        Optional.empty(),
        binder,
        bagMass,
        0.005,
        new WaterRange(0.0048, 0.0052),
        0.015,
        wetDensity,
        0.003,
        0.030,
        Optional.empty(),
        900,
        540,
        20,
        new TemperatureRange(10, 30),
        180,
        8000,
        10800,
        86400);
  }

  private static Room room(String id, Optional<Substrate> substrate, OptionalInt built) {
    return new Room(id, new Outline(List.of()), substrate, null, built, null);
  }
}
