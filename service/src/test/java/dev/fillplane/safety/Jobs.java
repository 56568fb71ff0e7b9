package dev.fillplane.safety;

import dev.fillplane.heat.AirReport;
import dev.fillplane.heat.AirVerdict;
import dev.fillplane.heat.Drying;
import dev.fillplane.heat.EvaporationBand;
import dev.fillplane.heat.EvaporationLimit;
import dev.fillplane.heat.MoistureVerdict;
import dev.fillplane.heat.Site;
import dev.fillplane.heat.SlabMoisture;
import dev.fillplane.material.Binder;
import dev.fillplane.material.DataSheet;
import dev.fillplane.material.TemperatureRange;
import dev.fillplane.material.WaterRange;
import dev.fillplane.pour.Crew;
import dev.fillplane.room.Feature;
import dev.fillplane.room.FeatureKind;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
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
  private OptionalDouble humidity = OptionalDouble.empty();
  private Optional<AirReport> report = Optional.empty();
  private SlabMoisture slab = slab(MoistureVerdict.UNKNOWN);
  private final List<Feature> features = new ArrayList<>();
  private Optional<Jurisdiction> where = Optional.empty();
  private Optional<OldCovering> oldCovering = Optional.empty();
  private Optional<Boolean> tested = Optional.empty();
  private Optional<Boolean> suspended = Optional.empty();
  private OptionalDouble allowance = OptionalDouble.empty();
  private OptionalDouble joistSpan = OptionalDouble.empty();
  private Optional<Heater> heater = Optional.empty();
  private Optional<Boolean> solvents = Optional.empty();
  private Optional<Boolean> flames = Optional.empty();
  private Optional<FloorHeating> heating = Optional.empty();
  private List<BaseKind> base = List.of();

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

  Jobs humidity(double share) {
    humidity = OptionalDouble.of(share);
    return this;
  }

  /** A dew point in C, with the base at the 18 C of the usual job, and evaporation in kg/m2/h. */
  Jobs moisture(double dewPoint, double evaporation) {
    double rate = evaporation / 3600;
    report =
        Optional.of(
            new AirReport(
                rate,
                new EvaporationBand(0.6 * rate, 1.4 * rate),
                rate,
                new EvaporationLimit(0.25 / 3600, 0.5 / 3600),
                dewPoint,
                18 - dewPoint,
                dewPoint + 3,
                AirVerdict.BREAKS));
    return this;
  }

  Jobs slabMoisture(MoistureVerdict verdict) {
    slab = slab(verdict);
    return this;
  }

  private static SlabMoisture slab(MoistureVerdict verdict) {
    return new SlabMoisture(3, 0.4, verdict, OptionalDouble.of(0.75), Optional.empty());
  }

  Jobs feature(FeatureKind kind) {
    features.add(
        kind.isLine()
            ? Feature.line(kind, new Position(1, 1), new Position(2, 1))
            : Feature.at(kind, new Position(1, 1), 0.1));
    return this;
  }

  Jobs where(Jurisdiction told) {
    where = Optional.of(told);
    return this;
  }

  Jobs oldCovering(OldCovering told) {
    oldCovering = Optional.of(told);
    return this;
  }

  Jobs tested() {
    tested = Optional.of(true);
    return this;
  }

  Jobs suspended(boolean told) {
    suspended = Optional.of(told);
    return this;
  }

  /** In psf. */
  Jobs allowance(double pounds) {
    allowance = OptionalDouble.of(Load.ofPoundsPerSquareFoot(pounds).si());
    return this;
  }

  Jobs joistSpan(double metres) {
    joistSpan = OptionalDouble.of(metres);
    return this;
  }

  Jobs heater(Heater told) {
    heater = Optional.of(told);
    return this;
  }

  Jobs solvents() {
    solvents = Optional.of(true);
    return this;
  }

  Jobs flames() {
    flames = Optional.of(true);
    return this;
  }

  Jobs heating(FloorHeating told) {
    heating = Optional.of(told);
    return this;
  }

  Jobs base(BaseKind... kinds) {
    base = List.of(kinds);
    return this;
  }

  SafetyInput input() {
    List<Room> all =
        rooms.isEmpty()
            ? List.of(room("hall", Optional.of(Substrate.CONCRETE), OptionalInt.of(2015)))
            : rooms;
    Site conditions = new Site(air, air - 2, air, 15, humidity, 0, ventilated, 2);
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
        rails,
        premises(),
        features,
        new Drying(0, 0, 0, 3, slab, report, List.of()));
  }

  private Premises premises() {
    return new Premises(
        where,
        oldCovering,
        tested,
        suspended,
        allowance,
        joistSpan,
        heater,
        solvents,
        flames,
        heating,
        base);
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
        86400,
        40_000,
        Optional.empty());
  }

  private static Room room(String id, Optional<Substrate> substrate, OptionalInt built) {
    return new Room(id, new Outline(List.of()), substrate, null, built, null);
  }
}
