package dev.fillplane.plan;

import dev.fillplane.depth.ContourLevels;
import dev.fillplane.depth.Contours;
import dev.fillplane.depth.DepthField;
import dev.fillplane.depth.DepthSummary;
import dev.fillplane.depth.Probe;
import dev.fillplane.depth.Probes;
import dev.fillplane.depth.RoomDepth;
import dev.fillplane.depth.VolumeDraws;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.DataSheet;
import dev.fillplane.supply.Minimums;
import dev.fillplane.surface.FittedSurface;
import dev.fillplane.surface.FloorResiduals;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.SurfaceSummary;
import dev.fillplane.survey.Elevations;
import dev.fillplane.target.FoundTarget;
import dev.fillplane.target.HighPoints;
import dev.fillplane.target.TargetFinder;
import dev.fillplane.target.TargetShape;
import dev.fillplane.target.TargetSummary;
import dev.fillplane.target.TargetWish;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Polygon;

/** The first half of a plan: from readings to depths, with what the second half needs of it. */
final class LevelledFloor {

  /** Realisations behind the odds. */
  static final int REALISATIONS = 200;

  private final PlanRequest request;
  private final DataSheet sheet;
  private final Findings findings;
  private final FittedFloor fitted;
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
    this.findings = findings;
    fitted = FittedFloor.of(request, findings);
    readings = fitted.readings();
    elevations = fitted.elevations();
    surface = fitted.surface();
    sample = fitted.sample();
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

  DepthFieldAnswer answer() {
    return new DepthFieldAnswer(
        request.reference(),
        elevations(),
        surfaceSummary(),
        targetSummary(),
        depthSummary(),
        findings.warnings());
  }

  Elevations elevations() {
    return Surveys.brief(elevations);
  }

  SurfaceSummary surfaceSummary() {
    return MoreReadings.told(
        request, surface, readings.spots(), sample, field, target.plane(), sheet);
  }

  TargetSummary targetSummary() {
    return new TargetSummary(
        target.shape(),
        target.plane().elevation(),
        target.plane().slopeX(),
        target.plane().slopeY(),
        target.boundBy(),
        draws.bareOdds(),
        draws.guardHeight(request.confidence()));
  }

  DepthSummary depthSummary() {
    List<Probe> probes =
        Probes.of(
            request.probes(),
            surface,
            target.plane(),
            request.rooms(),
            Place.root().at("probes"),
            findings);
    double[] levels = ContourLevels.choose(request.units(), field.maximum());
    return new DepthSummary(
        field.area(),
        field.pouredArea(),
        field.mean(),
        field.maximum(),
        field.minimum(),
        field.volume(),
        draws.odds(),
        roomDepths(),
        field.grindVolume(),
        field.grindArea(),
        field.deepest(),
        field.highest(),
        probes,
        field.grid(),
        new Contours(field.contours(levels)));
  }

  private List<RoomDepth> roomDepths() {
    List<RoomDepth> depths = new ArrayList<>();
    for (int i = 0; i < request.rooms().size(); i++) {
      double volume = field.rooms().get(i).volume();
      depths.add(new RoomDepth(request.rooms().get(i).id(), volume, draws.odds(i)));
    }
    return depths;
  }

  /** Mean standard deviation of the floor, over places spread evenly through the rooms. */
  double meanDeviation() {
    return fitted.meanDeviation();
  }

  /** Whether a room has too few readings to tell how flat it is. */
  boolean isThinlyRead() {
    return readings.thin();
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
    return fitted.polygons();
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
