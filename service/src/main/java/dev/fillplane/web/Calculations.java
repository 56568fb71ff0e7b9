package dev.fillplane.web;

import dev.fillplane.heat.AirCheckRequest;
import dev.fillplane.heat.AirChecker;
import dev.fillplane.heat.MixCheckRequest;
import dev.fillplane.heat.MixChecker;
import dev.fillplane.plan.Computed;
import dev.fillplane.plan.ElevationsRequest;
import dev.fillplane.plan.FlatnessCheckRequest;
import dev.fillplane.plan.FlatnessChecker;
import dev.fillplane.plan.Methods;
import dev.fillplane.plan.Plan;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.plan.PlannedUnit;
import dev.fillplane.plan.Planner;
import dev.fillplane.plan.PourCheckRequest;
import dev.fillplane.plan.PourChecker;
import dev.fillplane.plan.SurveyPlanRequest;
import dev.fillplane.plan.SurveyPlanner;
import dev.fillplane.render.BatchList;
import dev.fillplane.render.DepthMap;
import dev.fillplane.render.Layer;
import dev.fillplane.render.Paper;
import dev.fillplane.render.PlanTracer;
import dev.fillplane.render.PourPage;
import dev.fillplane.render.PourSheet;
import dev.fillplane.render.PourTimeline;
import dev.fillplane.render.Wording;
import dev.fillplane.safety.DustCheckRequest;
import dev.fillplane.safety.DustChecker;
import dev.fillplane.safety.LiftingCheckRequest;
import dev.fillplane.safety.LiftingChecker;
import dev.fillplane.supply.BagCountRequest;
import dev.fillplane.supply.BagCounter;
import dev.fillplane.web.json.Sentences;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Every operation that takes a body and computes an answer. */
final class Calculations {

  static final String SVG = "image/svg+xml";
  static final String CSV = "text/csv";
  static final String HTML = "text/html";
  static final String GEO_JSON = "application/geo+json";
  static final String PDF = "application/pdf";

  private final Calculation<PlanRequest> plans = plans(unit -> {});

  private final Calculation<PlanRequest> sheets =
      new Calculation<>(
          "/v1/pour-sheets",
          "PlanRequest",
          PlanRequest.class,
          PDF,
          (request, caller) -> pourSheet(request, caller));

  private final List<Calculation<?>> all =
      List.of(
          plans,
          new Calculation<>(
              "/v1/depth-maps",
              "PlanRequest",
              PlanRequest.class,
              SVG,
              (request, caller) -> depthMap(request, caller)),
          new Calculation<>(
              "/v1/timelines",
              "PlanRequest",
              PlanRequest.class,
              SVG,
              (request, caller) ->
                  PourTimeline.draw(request, Planner.plan(request, computed(caller)))),
          new Calculation<>(
              "/v1/plan-shapes",
              "PlanRequest",
              PlanRequest.class,
              GEO_JSON,
              (request, caller) ->
                  PlanTracer.trace(request, Planner.plan(request, computed(caller)))),
          new Calculation<>(
              "/v1/batch-lists",
              "PlanRequest",
              PlanRequest.class,
              CSV,
              (request, caller) -> batchList(request, caller)),
          new Calculation<>(
              "/v1/pour-pages",
              "PlanRequest",
              PlanRequest.class,
              HTML,
              (request, caller) -> pourPage(request, caller)),
          sheets,
          Calculation.json(
              "/v1/depth-fields",
              "PlanRequest",
              PlanRequest.class,
              (request, caller) -> Planner.depthField(request)),
          Calculation.json(
              "/v1/elevations",
              "ElevationsRequest",
              ElevationsRequest.class,
              (request, caller) -> Planner.elevations(request)),
          Calculation.json(
              "/v1/survey-plans",
              "SurveyPlanRequest",
              SurveyPlanRequest.class,
              (request, caller) -> SurveyPlanner.plan(request)),
          Calculation.json(
              "/v1/bag-counts",
              "BagCountRequest",
              BagCountRequest.class,
              (request, caller) -> BagCounter.count(request)),
          Calculation.json(
              "/v1/mix-checks",
              "MixCheckRequest",
              MixCheckRequest.class,
              (request, caller) -> MixChecker.check(request)),
          Calculation.json(
              "/v1/air-checks",
              "AirCheckRequest",
              AirCheckRequest.class,
              (request, caller) -> AirChecker.check(request)),
          Calculation.json(
              "/v1/lifting-checks",
              "LiftingCheckRequest",
              LiftingCheckRequest.class,
              (request, caller) -> LiftingChecker.check(request)),
          Calculation.json(
              "/v1/dust-checks",
              "DustCheckRequest",
              DustCheckRequest.class,
              (request, caller) -> DustChecker.check(request)),
          Calculation.json(
              "/v1/pour-checks",
              "PourCheckRequest",
              PourCheckRequest.class,
              (request, caller) -> PourChecker.check(request)),
          Calculation.json(
              "/v1/flatness-checks",
              "FlatnessCheckRequest",
              FlatnessCheckRequest.class,
              (request, caller) -> FlatnessChecker.check(request)));

  /** All of them. */
  List<Calculation<?>> all() {
    return all;
  }

  /** The main one. */
  Calculation<PlanRequest> plans() {
    return plans;
  }

  /** The one whose first answer is the slowest. */
  Calculation<PlanRequest> sheets() {
    return sheets;
  }

  /** The main one, which tells {@code listener} more of the unit than its plan. */
  static Calculation<PlanRequest> plans(Consumer<PlannedUnit> listener) {
    return Calculation.json(
        "/v1/plans",
        "PlanRequest",
        PlanRequest.class,
        (request, caller) -> {
          PlannedUnit unit = Planner.unit(request, computed(caller));
          listener.accept(unit);
          return unit.plan();
        });
  }

  /** The schemas of their bodies. */
  List<String> schemas() {
    return all.stream().map(Calculation::schema).distinct().toList();
  }

  /** The layers are read first, so that nobody waits for a plan that cannot be drawn. */
  private static String depthMap(PlanRequest request, Calculation.Caller caller) {
    Set<Layer> layers = Layers.of(caller.query().told("layers"));
    return DepthMap.draw(request, Planner.plan(request, computed(caller)), layers);
  }

  private static String batchList(PlanRequest request, Calculation.Caller caller) {
    Plan plan = Planner.plan(request, computed(caller));
    return BatchList.of(plan.pour().batches(), caller.units());
  }

  private static String pourPage(PlanRequest request, Calculation.Caller caller) {
    Paper paper = PageParameter.of(caller.query().told("page"), caller.units());
    Plan plan = Planner.plan(request, computed(caller));
    return PourPage.write(request, plan, paper, wording(caller));
  }

  private static byte[] pourSheet(PlanRequest request, Calculation.Caller caller) {
    Paper paper = PageParameter.of(caller.query().told("page"), caller.units());
    Plan plan = Planner.plan(request, computed(caller));
    return PourSheet.write(request, plan, paper, wording(caller));
  }

  private static Wording wording(Calculation.Caller caller) {
    return (code, values) -> Sentences.of(code, values, caller.units());
  }

  private static Computed computed(Calculation.Caller caller) {
    return new Computed(Version.TEXT, caller.inputDigest(), Methods.ids());
  }
}
