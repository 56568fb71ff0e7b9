package dev.fillplane.plan;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.Layers;
import dev.fillplane.depth.ContourLevels;
import dev.fillplane.depth.DepthField;
import dev.fillplane.depth.GroundAreas;
import dev.fillplane.depth.Levels;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.flatness.FlatnessLimit;
import dev.fillplane.flatness.GapLimit;
import dev.fillplane.flatness.GrindAndPatch;
import dev.fillplane.flatness.Straightedge;
import dev.fillplane.heat.Conditions;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.room.Room;
import dev.fillplane.screed.Rails;
import dev.fillplane.supply.BagOdds;
import dev.fillplane.supply.Lift;
import dev.fillplane.surface.Deviations;
import dev.fillplane.surface.FloorFit;
import dev.fillplane.surface.FloorNodes;
import dev.fillplane.surface.FloorPoints;
import dev.fillplane.surface.FloorResiduals;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.KrigedSurface;
import dev.fillplane.surface.NextReadings;
import dev.fillplane.surface.Spots;
import dev.fillplane.surface.VolumeSpread;
import dev.fillplane.survey.SurveyAdjustment;
import dev.fillplane.target.HighPoints;
import dev.fillplane.target.Plane;
import dev.fillplane.target.TargetFinder;
import dev.fillplane.target.TargetShape;
import dev.fillplane.target.TargetWish;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;

/**
 * What a plan computes, piece by piece, each on what the plan gives it and as often as the plan
 * needs it, not as often as it asks for it: nothing here is found twice.
 */
final class PlanKernels {

  private static final Place ROOT = Place.root();
  private static final double[] LOWERED = {0.001, 0.002, 0.003, 0.005};

  private final PlanRequest request;
  private final Plan plan;
  private final LevelledFloor floor;
  private final Spots spots;
  private final KrigedSurface surface;
  private final FloorSample sample;
  private final FloorResiduals realisations;
  private final HighPoints highs;
  private final DepthField field;
  private final Levels flat;
  private final FlatnessLimit limit;
  private final DataSheet asPoured;
  private final BayPlan bays;

  PlanKernels(PlanRequest request) {
    this.request = request;
    plan = Planner.plan(request, new Computed("bench", "bench", List.of()));
    Findings findings = new Findings();
    DataSheet sheet = Catalogue.resolve(request.material(), ROOT, findings);
    floor = new LevelledFloor(request, sheet, findings);
    spots = floor.readings().spots();
    surface = (KrigedSurface) floor.surface();
    sample = floor.sample();
    realisations = realisations();
    highs = HighPoints.of(sample, spots, floor.readings().names());
    field = floor.field();
    flat = floor.under(floor.plainly(TargetShape.PLANE)).levels();
    limit = plan.flatness().limit();
    asPoured =
        floor.sheet().yielding(BagOdds.planned(field.volume(), field.pouredArea(), floor.sheet()));
    bays = bays(asPoured);
  }

  PlanRequest request() {
    return request;
  }

  /** The pieces by name. */
  Map<String, Supplier<?>> all() {
    Map<String, Supplier<?>> all = new LinkedHashMap<>();
    all.put("adjust the survey", this::adjust);
    all.put("fit the covariance", this::fit);
    all.put("each reading against the others", surface::leaveOneOut);
    all.put("kriging mean on cells", () -> FloorSample.of(request.rooms(), surface, sample.cell()));
    all.put("kriging deviation at 200 places", this::deviations);
    all.put("next readings", this::nextReadings);
    all.put("200 realisations", this::realisations);
    all.put("target", () -> find(request.target()));
    all.put("target, sloped", () -> find(floor.plainly(TargetShape.PLANE)));
    all.put("depths of the plan", () -> DepthField.of(sample, field.levels()));
    all.put("depths of a sloped target", () -> DepthField.of(sample, flat));
    all.put("depths where humps are ground", this::lowered);
    all.put("volumes of realisations", () -> field.volumes(realisations));
    all.put("the same under a sloped target", () -> floor.under(flat).volumes(realisations));
    all.put("contours and grid", this::contours);
    all.put("places to grind", () -> GroundAreas.of(field, spots));
    all.put("bags", this::bags);
    all.put("straightedge", this::straightedge);
    all.put("humps and hollows", this::corrections);
    all.put("bays and ribbons", () -> bays(asPoured));
    all.put("pour and its search", this::pour);
    all.put("rails", () -> Rails.of(bays, request.equipment().screedLength()));
    return all;
  }

  private Object adjust() {
    return SurveyAdjustment.adjust(request.survey(), ROOT, new Findings());
  }

  private Object fit() {
    return FloorFit.fit(spots, request.surface(), floor.polygons(), ROOT, new Findings());
  }

  private Object deviations() {
    FloorPoints points = sample.points();
    int step = Math.max(1, points.count() / 200);
    return surface.deviations(every(points.x(), step), every(points.y(), step));
  }

  private static double[] every(double[] values, int step) {
    return DoubleStream.iterate(0, i -> i < values.length, i -> i + step)
        .map(i -> values[(int) i])
        .toArray();
  }

  private Object nextReadings() {
    Plane target = floor.target().plane();
    FloorNodes nodes = FloorNodes.of(sample, target.elevation(), target.slopeX(), target.slopeY());
    VolumeSpread spread = VolumeSpread.after(surface, nodes);
    Deviations deviations = Deviations.of(nodes, spread);
    double error = request.survey().readingError() * request.survey().readingError();
    int most = request.surface().nextReadings();
    return List.of(
        deviations, NextReadings.choose(nodes, spread, spots, floor.polygons(), error, most));
  }

  private FloorResiduals realisations() {
    return surface.realisations(floor.polygons(), LevelledFloor.REALISATIONS, request.seed());
  }

  private Object find(TargetWish wish) {
    OptionalDouble covering = request.coveringThickness();
    double depth = request.target().minimumDepth().orElse(0);
    return TargetFinder.find(wish, depth, highs, covering, ROOT, new Findings());
  }

  private Object lowered() {
    return Arrays.stream(LOWERED).mapToObj(h -> floor.loweredBy(h, field.levels())).toList();
  }

  private Object contours() {
    double[] levels = ContourLevels.choose(request.units(), field.maximum());
    return List.of(field.contours(levels), field.grid());
  }

  private Object bags() {
    return BagOdds.of(
        floor.draws().volumes(),
        floor.draws().wetAreas(),
        floor.sheet(),
        request.confidence(),
        request.seed());
  }

  private Object straightedge() {
    GapLimit edge = new GapLimit(limit.straightedge(), limit.gap(), 1);
    return Straightedge.walk(floor.polygons(), sample::elevation, edge, 0);
  }

  private Object corrections() {
    return GrindAndPatch.of(floor.polygons(), sample::elevation, limit);
  }

  private BayPlan bays(DataSheet sheet) {
    List<Double> lifts = plan.quantities().lifts().stream().map(Lift::maximumDepth).toList();
    double batch = request.crew().bagsPerBatch() * sheet.yieldPerBag();
    List<Room> rooms = request.rooms();
    return BayPlan.of(
        rooms, request.features(), Layers.of(field, lifts), request.crew().ribbons(batch));
  }

  private Object pour() {
    PourJob job =
        new PourJob(
            request.conditions().orElseGet(Conditions::unknown).site(),
            request.crew(),
            field.pouredArea(),
            field.volume(),
            field.mean(),
            field.minimum(),
            field.maximum(),
            this::bays);
    return job.pour(bays, asPoured, plan.mix());
  }
}
