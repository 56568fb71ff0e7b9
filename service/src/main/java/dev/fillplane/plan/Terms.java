package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.heat.Conditions;
import dev.fillplane.heat.WorkingTime;
import dev.fillplane.pour.Crew;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import dev.fillplane.safety.Premises;
import dev.fillplane.surface.Variogram;
import dev.fillplane.survey.HeightCheck;
import dev.fillplane.survey.Survey;
import dev.fillplane.target.GrindWish;
import dev.fillplane.target.TargetWish;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The single quantities of a plan request: what holds where they are not told, and their ranges.
 */
public final class Terms {

  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final double HOUR = 3600;

  private static final List<Term> ALL =
      List.of(
          new Term(
              "floor of all rooms",
              "rooms",
              Dimension.AREA,
              NONE,
              0,
              10_000,
              request -> OptionalDouble.of(floor(request))),
          new Term(
              "error of a reading",
              "survey/readingError",
              Dimension.HEIGHT,
              OptionalDouble.of(Survey.DEFAULT_READING_ERROR),
              0.00001,
              0.05,
              request -> OptionalDouble.of(request.survey().readingError())),
          new Term(
              "tilt of a laser",
              "survey/laserTilt",
              Dimension.SLOPE,
              OptionalDouble.of(Survey.DEFAULT_LASER_TILT),
              0,
              0.005,
              request -> OptionalDouble.of(request.survey().laserTilt())),
          new Term(
              "limit of the misclosure",
              "survey/misclosureLimit",
              Dimension.HEIGHT,
              NONE,
              0,
              1,
              request -> request.survey().misclosureLimit()),
          new Term(
              "length of the levelling loop",
              "survey/loopLength",
              Dimension.PLAN,
              NONE,
              0,
              100_000,
              request -> request.survey().loopLength()),
          variogram("nugget", Dimension.HEIGHT_VARIANCE, 0, 0.01, Variogram::nugget),
          variogram("sill", Dimension.HEIGHT_VARIANCE, 0, 1, Variogram::sill),
          variogram("range", Dimension.PLAN, 0.001, 1e6, Variogram::range),
          new Term(
              "least depth",
              "target/minimumDepth",
              Dimension.HEIGHT,
              NONE,
              0,
              0.5,
              request -> request.target().minimumDepth()),
          new Term(
              "steepest slope of a plane that is found",
              "target/maximumSlope",
              Dimension.SLOPE,
              OptionalDouble.of(TargetWish.DEFAULT_MAXIMUM_SLOPE),
              0,
              0.005,
              request -> OptionalDouble.of(request.target().maximumSlope())),
          new Term(
              "depth of grinding",
              "target/grind/maximumDepth",
              Dimension.HEIGHT,
              OptionalDouble.of(GrindWish.DEFAULT_MAXIMUM_DEPTH),
              0,
              0.05,
              request -> OptionalDouble.of(request.target().grind().maximumDepth())),
          new Term(
              "area ground in an hour",
              "target/grind/areaPerHour",
              Dimension.AREA,
              OptionalDouble.of(GrindWish.DEFAULT_AREA_PER_HOUR),
              0.1,
              200,
              request -> OptionalDouble.of(request.target().grind().areaPerHour())),
          new Term(
              "elevation of the target",
              "target/elevation",
              Dimension.HEIGHT,
              NONE,
              -HeightCheck.FURTHEST,
              HeightCheck.FURTHEST,
              request -> request.target().elevation()),
          condition(
              "air",
              Dimension.TEMPERATURE,
              OptionalDouble.of(Conditions.USUAL_AIR),
              -30,
              60,
              Conditions::air),
          condition("floor", Dimension.TEMPERATURE, NONE, -30, 80, Conditions::floor),
          condition("powder", Dimension.TEMPERATURE, NONE, -30, 80, Conditions::powder),
          condition(
              "water",
              Dimension.TEMPERATURE,
              OptionalDouble.of(Conditions.USUAL_WATER),
              0.0,
              95,
              Conditions::water),
          condition(
              "airspeed", Dimension.AIRSPEED, OptionalDouble.of(0), 0, 30, Conditions::airspeed),
          crew(
              "way from the mixers to the floor",
              "carryDistance",
              Dimension.PLAN,
              OptionalDouble.of(Crew.USUAL_CARRY),
              200,
              crew -> OptionalDouble.of(crew.carryDistance())),
          crew(
              "time to measure the water of a bag",
              "waterTime",
              Dimension.TIME,
              OptionalDouble.of(Crew.USUAL_WATER_TIME),
              HOUR,
              crew -> OptionalDouble.of(crew.waterTime())),
          crew("time under the mixer", "mixTime", Dimension.TIME, NONE, 2 * HOUR, Crew::mixTime),
          crew(
              "time between two bays",
              "betweenBays",
              Dimension.TIME,
              OptionalDouble.of(0),
              24 * HOUR,
              crew -> OptionalDouble.of(crew.betweenBays())),
          new Term(
              "heat of mixing",
              "conditions/mixingHeat",
              Dimension.TEMPERATURE_DIFFERENCE,
              OptionalDouble.of(WorkingTime.MIXING_HEAT),
              0,
              4,
              request ->
                  request.conditions().map(Conditions::mixingHeat).orElse(OptionalDouble.empty())),
          new Term(
              "length of the screed",
              "equipment/screedLength",
              Dimension.PLAN,
              OptionalDouble.of(3),
              0.5,
              12,
              request -> OptionalDouble.of(request.equipment().screedLength())),
          new Term(
              "dead load that the floor may take",
              "premises/deadLoadAllowance",
              Dimension.SURFACE_LOAD,
              OptionalDouble.of(Premises.USUAL_DEAD_LOAD),
              0,
              50_000,
              request -> request.premises().deadLoadAllowance()),
          new Term(
              "span of the joists",
              "premises/joistSpan",
              Dimension.PLAN,
              NONE,
              0.3,
              15,
              request -> request.premises().joistSpan()),
          new Term(
              "spacing of the joists",
              "premises/joistSpacing",
              Dimension.HEIGHT,
              NONE,
              0.05,
              3,
              request -> request.premises().joistSpacing()),
          new Term(
              "sag of the floor",
              "premises/sag",
              Dimension.HEIGHT,
              NONE,
              0,
              0.5,
              request -> request.premises().sag()),
          new Term(
              "thickness of the covering",
              "coveringThickness",
              Dimension.HEIGHT,
              NONE,
              0,
              0.3,
              PlanRequest::coveringThickness),
          new Term(
              "side of a cell",
              "grid/cell",
              Dimension.PLAN,
              NONE,
              0.01,
              10,
              request -> request.grid().cell()));

  private Terms() {}

  /** All of them, in the order of the request. */
  public static List<Term> all() {
    return ALL;
  }

  static void check(PlanRequest request, Findings findings) {
    for (Term term : ALL) {
      term.told().apply(request).ifPresent(told -> check(term, term.path(), told, findings));
    }
    TargetWish target = request.target();
    for (int i = 0; i < target.fixed().size(); i++) {
      checkHeight("target/fixed/" + i, target.fixed().get(i).elevation(), findings);
    }
    for (int i = 0; i < target.ceiling().size(); i++) {
      checkHeight("target/ceiling/" + i, target.ceiling().get(i).elevation(), findings);
    }
  }

  private static void checkHeight(String path, double elevation, Findings findings) {
    check("target/elevation", path + "/elevation", elevation, findings);
  }

  /** Holds a quantity of another request, at {@code path}, to the range that it has in a plan. */
  static void check(String planPath, String path, double told, Findings findings) {
    for (Term term : ALL) {
      if (term.path().equals(planPath)) {
        check(term, path, told, findings);
      }
    }
  }

  /** Area of the outer rings, which need not be valid yet. */
  private static double floor(PlanRequest request) {
    double sum = 0;
    for (Room room : request.rooms()) {
      List<Position> ring = room.outline().rings().get(0);
      Position start = ring.get(0);
      double twice = 0;
      for (int i = 1; i < ring.size(); i++) {
        Position from = ring.get(i - 1);
        Position to = ring.get(i);
        twice +=
            (from.x() - start.x()) * (to.y() - start.y())
                - (to.x() - start.x()) * (from.y() - start.y());
      }
      sum += Math.abs(twice) / 2;
    }
    return sum;
  }

  private static void check(Term term, String path, double told, Findings findings) {
    if (told < term.from() || told > term.to()) {
      findings.error(
          "out-of-range",
          place(path),
          "name",
          term.name(),
          "told",
          Amount.of(told, term.dimension()),
          "from",
          Amount.of(term.from(), term.dimension()),
          "to",
          Amount.of(term.to(), term.dimension()));
    }
  }

  private static Place place(String path) {
    Place place = Place.root();
    for (String name : path.split("/", -1)) {
      place = place.at(name);
    }
    return place;
  }

  private static Term variogram(
      String name, Dimension dimension, double from, double to, ToDoubleFunction<Variogram> told) {
    return new Term(
        name + " of the variogram",
        "surface/variogram/" + name,
        dimension,
        NONE,
        from,
        to,
        request -> {
          Optional<Variogram> variogram = request.surface().variogram();
          return variogram.isEmpty()
              ? NONE
              : OptionalDouble.of(told.applyAsDouble(variogram.get()));
        });
  }

  private static Term crew(
      String name,
      String property,
      Dimension dimension,
      OptionalDouble usual,
      double most,
      Function<Crew, OptionalDouble> told) {
    return new Term(
        name, "crew/" + property, dimension, usual, 0, most, request -> told.apply(request.crew()));
  }

  private static Term condition(
      String name,
      Dimension dimension,
      OptionalDouble usual,
      double from,
      double to,
      Function<Conditions, OptionalDouble> told) {
    return new Term(
        name.equals("airspeed") ? "draught over the floor" : "temperature of the " + name,
        "conditions/" + name,
        dimension,
        usual,
        from,
        to,
        request -> request.conditions().map(told).orElse(OptionalDouble.empty()));
  }
}
