package dev.fillplane.plan;

import dev.fillplane.depth.DepthField;
import dev.fillplane.depth.VolumeDraws;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.DataSheet;
import dev.fillplane.room.Room;
import dev.fillplane.supply.Minimums;
import dev.fillplane.surface.CellSize;
import dev.fillplane.surface.FittedSurface;
import dev.fillplane.surface.FloorFit;
import dev.fillplane.surface.FloorPoints;
import dev.fillplane.surface.FloorResiduals;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.SpotsCheck;
import dev.fillplane.surface.StepCheck;
import dev.fillplane.surface.SurfaceWish;
import dev.fillplane.survey.Elevations;
import dev.fillplane.survey.SurveyAdjustment;
import dev.fillplane.target.FoundTarget;
import dev.fillplane.target.HighPoints;
import dev.fillplane.target.TargetFinder;
import dev.fillplane.target.TargetShape;
import dev.fillplane.target.TargetWish;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Polygon;

/** The first half of a plan: from readings to depths, with what the second half needs of it. */
final class LevelledFloor {

  /** Realisations behind the odds. */
  static final int REALISATIONS = 200;

  /** Places at which the mean deviation is taken, about. */
  private static final int DEVIATIONS = 200;

  private final PlanRequest request;
  private final DataSheet sheet;
  private final RoomReadings readings;
  private final Elevations elevations;
  private final FittedSurface surface;
  private final FloorSample sample;
  private final FloorResiduals realisations;
  private final double minimumDepth;
  private final HighPoints highs;
  private final FoundTarget target;
  private final DepthField field;
  private final VolumeDraws draws;

  /**
   * Levels the floor of a request whose quantities and rooms are checked.
   *
   * @throws dev.fillplane.finding.FindingsException if the findings have errors, from here or from
   *     before
   */
  LevelledFloor(PlanRequest request, DataSheet sheet, Findings findings) {
    this.request = request;
    this.sheet = sheet;
    Place survey = Place.root().at("survey");
    Elevations adjusted = SurveyAdjustment.adjust(request.survey(), survey, findings);
    readings = RoomReadings.of(request, adjusted, findings);
    findings.throwIfErrors();
    SpotsCheck.check(readings.spots(), survey, findings);
    double cell =
        CellSize.choose(request.rooms(), request.grid().cell(), Place.root().at("grid"), findings);
    findings.throwIfErrors();
    SurfaceWish wish =
        StepCheck.told(
            request.surface(),
            readings.spots(),
            polygons(),
            Place.root().at("surface").at("steps"),
            findings);
    findings.throwIfErrors();
    surface =
        FloorFit.fit(readings.spots(), wish, polygons(), Place.root().at("surface"), findings);
    elevations = readings.withSuspects(adjusted, surface.leaveOneOut());
    sample = FloorSample.of(request.rooms(), surface, cell);
    realisations = surface.realisations(polygons(), REALISATIONS, request.seed());
    minimumDepth = request.target().minimumDepth().orElse(Minimums.depth(request.rooms(), sheet));
    Minimums.check(
        request.target().minimumDepth(),
        request.rooms(),
        sheet,
        Place.root().at("target").at("minimumDepth"),
        findings);
    highs = HighPoints.of(sample, readings.spots(), readings.names());
    target = find(request.target(), findings);
    findings.throwIfErrors();
    field = DepthField.of(sample, target.plane());
    draws = field.volumes(realisations);
    readings.warnOfBoundSuspects(target, elevations, findings);
  }

  private FoundTarget find(TargetWish wish, Findings into) {
    return TargetFinder.find(
        wish, minimumDepth, highs, request.coveringThickness(), Place.root().at("target"), into);
  }

  /** The same floor under another target; what is odd about that one is not told. */
  DepthField under(TargetWish wish) {
    return DepthField.of(sample, find(wish, new Findings()).plane());
  }

  /** Mean standard deviation of the floor, over places spread evenly through the rooms. */
  double meanDeviation() {
    FloorPoints points = sample.points();
    int step = Math.max(1, points.count() / DEVIATIONS);
    double sum = 0;
    int count = 0;
    for (int i = 0; i < points.count(); i += step) {
      sum += surface.deviation(points.x()[i], points.y()[i]);
      count++;
    }
    return count > 0 ? sum / count : 0;
  }

  /** Whether a room has too few readings to tell how flat it is. */
  boolean isThinlyRead() {
    return readings.thin();
  }

  /** The adjusted survey, with the points that the surface does not believe. */
  Elevations elevations() {
    return elevations;
  }

  RoomReadings readings() {
    return readings;
  }

  FittedSurface surface() {
    return surface;
  }

  FoundTarget target() {
    return target;
  }

  DataSheet sheet() {
    return sheet;
  }

  FloorSample sample() {
    return sample;
  }

  DepthField field() {
    return field;
  }

  VolumeDraws draws() {
    return draws;
  }

  VolumeDraws draws(DepthField other) {
    return other.volumes(realisations);
  }

  List<Polygon> polygons() {
    return request.rooms().stream().map(Room::outline).map(o -> o.polygon()).toList();
  }

  /** Nothing but a minimum depth is wished of the plane of an option. */
  TargetWish plainly(TargetShape shape) {
    return new TargetWish(
        shape,
        OptionalDouble.empty(),
        null,
        null,
        OptionalDouble.empty(),
        request.target().maximumSlope(),
        null);
  }
}
