package dev.fillplane.safety;

import dev.fillplane.depth.DepthRange;
import dev.fillplane.depth.Fill;
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
import dev.fillplane.pour.Placing;
import dev.fillplane.quantity.Load;
import dev.fillplane.room.BaseKind;
import dev.fillplane.room.Feature;
import dev.fillplane.room.FeatureKind;
import dev.fillplane.room.OldCovering;
import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import dev.fillplane.supply.Dam;
import dev.fillplane.supply.JoistBow;
import dev.fillplane.supply.JoistSag;
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
  private double least = 0.003;
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
  private Optional<List<BaseKind>> base = Optional.empty();
  private OptionalDouble spacing = OptionalDouble.empty();
  private OptionalDouble sag = OptionalDouble.empty();
  private Optional<List<StructureKind>> structure = Optional.empty();
  private Optional<Boolean> stone = Optional.empty();
  private boolean tiled;
  private double areaPerHour = 8;
  private final List<Dam> dams = new ArrayList<>();
  private double carry = 15;
  private Placing placing = Placing.BARREL;

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

  Jobs least(double depth) {
    least = depth;
    return this;
  }

  /** A room that tells more of its base. */
  Jobs room(String id, Substrate substrate, int built, OldCovering covering, BaseKind... kinds) {
    Room plain = room(id, Optional.of(substrate), OptionalInt.of(built));
    rooms.add(plain.orAs(Optional.of(List.of(kinds)), Optional.of(covering)));
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
    base = Optional.of(List.of(kinds));
    return this;
  }

  Jobs spacing(double metres) {
    spacing = OptionalDouble.of(metres);
    return this;
  }

  Jobs sag(double metres) {
    sag = OptionalDouble.of(metres);
    return this;
  }

  Jobs structure(StructureKind... kinds) {
    structure = Optional.of(List.of(kinds));
    return this;
  }

  /** A room with an opening at which the pour is so deep. */
  Jobs opening(Optional<String> into, double depth) {
    Opening opening =
        new Opening(
            "door",
            new Position(0, 0),
            new Position(1, 0),
            into.isPresent() ? OpeningKind.DOORWAY : OpeningKind.EXIT,
            into);
    Room plain = room("hall", Optional.of(Substrate.CONCRETE), OptionalInt.of(2015));
    rooms.add(
        new Room(
            plain.id(),
            plain.outline(),
            plain.substrate(),
            plain.absorbency(),
            plain.built(),
            List.of(opening)));
    dams.add(new Dam("hall", "door", 1, depth + 0.01));
    return this;
  }

  Jobs stone() {
    stone = Optional.of(true);
    return this;
  }

  Jobs tiled() {
    tiled = true;
    return this;
  }

  Jobs areaPerHour(double area) {
    areaPerHour = area;
    return this;
  }

  Jobs carry(double metres) {
    carry = metres;
    return this;
  }

  Jobs pump() {
    placing = Placing.PUMP;
    return this;
  }

  SafetyInput input() {
    List<Room> all =
        rooms.isEmpty()
            ? List.of(room("hall", Optional.of(Substrate.CONCRETE), OptionalInt.of(2015)))
            : rooms;
    Site conditions = new Site(air, air - 2, air, 15, humidity, 0, ventilated, 2);
    Premises premises = premises();
    List<RoomPour> pours = premises.of(all).stream().map(room -> pour(room, all.size())).toList();
    return new SafetyInput(
        pours,
        grindArea,
        areaPerHour,
        sheet(),
        conditions,
        bags,
        pourTime,
        crew(),
        bow(pours),
        dams,
        rails,
        tiled,
        premises,
        features,
        new Drying(0, 0, 0, 3, slab, report, List.of()));
  }

  /** The pour is spread evenly over the rooms. */
  private RoomPour pour(Room room, int rooms) {
    double area = bags > 0 ? 40.0 / rooms : 0;
    return new RoomPour(
        room, new Fill(area, area * mean), new DepthRange(least, bags > 0 ? deepest : -0.001));
  }

  /** The bow takes a bag for each 15 L. */
  private Optional<JoistBow> bow(List<RoomPour> pours) {
    if (joistSpan.isEmpty()) {
      return Optional.empty();
    }
    List<Room> all = pours.stream().map(RoomPour::room).toList();
    List<Fill> fills = pours.stream().map(RoomPour::fill).toList();
    double share = JoistSag.share(joistSpan.getAsDouble(), all, fills, sheet());
    double volume = share * fills.stream().mapToDouble(Fill::volume).sum();
    return Optional.of(new JoistBow(share, volume, (int) Math.ceil(volume / 0.015)));
  }

  private Crew crew() {
    return new Crew(
        null,
        null,
        null,
        null,
        null,
        placing,
        carry,
        null,
        OptionalDouble.empty(),
        null,
        null,
        Optional.empty());
  }

  private Premises premises() {
    return new Premises(
        where,
        oldCovering,
        tested,
        suspended,
        allowance,
        joistSpan,
        spacing,
        sag,
        structure,
        stone,
        heater,
        solvents,
        Optional.empty(),
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
