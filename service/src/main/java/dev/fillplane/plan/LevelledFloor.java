package dev.fillplane.plan;

import dev.fillplane.depth.DepthField;
import dev.fillplane.depth.DrawnFloor;
import dev.fillplane.depth.GroundArea;
import dev.fillplane.depth.GroundAreas;
import dev.fillplane.depth.Levels;
import dev.fillplane.depth.VolumeDraws;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.DataSheet;
import dev.fillplane.room.Room;
import dev.fillplane.supply.JoistSag;
import dev.fillplane.supply.Minimums;
import dev.fillplane.surface.FittedSurface;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.KrigedSurface;
import dev.fillplane.surface.Spots;
import dev.fillplane.survey.Elevations;
import dev.fillplane.target.FoundTarget;
import dev.fillplane.target.HighPoints;
import dev.fillplane.target.Plane;
import dev.fillplane.target.TargetFinder;
import dev.fillplane.target.TargetShape;
import dev.fillplane.target.TargetWish;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Polygon;

/** The first half of a plan: from readings to depths, with what the second half needs of it. */
final class LevelledFloor {

  /** Realisations behind the odds. */
  static final int REALISATIONS = 200;

  private final PlanRequest request;
  private final DataSheet stiffSheet;
  private final double bowShare;
  private final FittedFloor fitted;
  private final RoomReadings readings;
  private final Elevations elevations;
  private final FittedSurface surface;
  private final FloorSample sample;
  private final DrawnFloor realisations;
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
    stiffSheet = sheet;
    List<Room> rooms = request.premises().of(request.rooms());
    fitted = FittedFloor.of(request, findings);
    readings = fitted.readings();
    elevations = fitted.elevations();
    surface = fitted.surface();
    sample = fitted.sample();
    realisations =
        DrawnFloor.of(sample, surface.realisations(polygons(), REALISATIONS, request.seed()));
    minimumDepth = request.target().minimumDepth().orElse(Minimums.depth(rooms, sheet));
    Minimums.check(
        request.target().minimumDepth(),
        rooms,
        sheet,
        Place.root().at("target").at("minimumDepth"),
        findings);
    highs = HighPoints.of(sample, readings.spots(), readings.names());
    target = find(request.target(), findings);
    findings.throwIfErrors();
    field = DepthField.of(sample, levels(target, request.target().grind().allowed()));
    draws = field.volumes(realisations);
    bowShare = bowShare(rooms);
    readings.warnOfBoundSuspects(target, elevations, findings);
  }

  private double bowShare(List<Room> rooms) {
    OptionalDouble span = request.premises().joistSpan();
    return span.isPresent()
        ? JoistSag.share(span.getAsDouble(), rooms, field.rooms(), stiffSheet)
        : 0;
  }

  private FoundTarget find(TargetWish wish, Findings into) {
    return TargetFinder.find(
        wish, minimumDepth, highs, request.coveringThickness(), Place.root().at("target"), into);
  }

  /** What a target means for each room. */
  private Levels levels(FoundTarget found, boolean grinds) {
    List<Plane> planes = IntStream.range(0, request.rooms().size()).mapToObj(found::plane).toList();
    return new Levels(planes, grinds ? OptionalDouble.of(minimumDepth) : OptionalDouble.empty());
  }

  /**
   * The same floor under another target, nothing ground; what is odd about that one is not told.
   */
  DepthField under(TargetWish wish) {
    return under(levels(find(wish, new Findings()), false));
  }

  /** The same floor under some levels. */
  DepthField under(Levels levels) {
    return levels.equals(field.levels()) ? field : DepthField.of(sample, levels);
  }

  /**
   * The target as wished, but with nothing ground; empty where there is none, or where the target
   * is given.
   */
  Optional<Levels> unground() {
    Findings unheard = new Findings();
    FoundTarget found =
        request.target().grind().allowed()
            ? find(request.target().withoutGrinding(), unheard)
            : target;
    return unheard.hasErrors() || found.shape() == TargetShape.GIVEN
        ? Optional.empty()
        : Optional.of(levels(found, false));
  }

  /** The floor under some levels that come down by a height, what then stands too high ground. */
  DepthField loweredBy(double height, Levels levels) {
    List<Plane> planes =
        levels.planes().stream()
            .map(plane -> new Plane(plane.elevation() - height, plane.slopeX(), plane.slopeY()))
            .toList();
    return DepthField.of(sample, new Levels(planes, OptionalDouble.of(minimumDepth)));
  }

  /** What is to be ground; a dense survey has no reading off its surface. */
  List<GroundArea> groundAreas(DepthField ground) {
    return GroundAreas.of(ground, surface instanceof KrigedSurface ? readings.spots() : Spots.NONE);
  }

  /** Mean standard deviation of the floor, over places spread evenly through the rooms. */
  double meanDeviation() {
    return fitted.meanDeviation();
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

  /** The sheet as told. */
  DataSheet stiffSheet() {
    return stiffSheet;
  }

  /** What the bow of wood joists takes, as a share of what is poured over a stiff floor. */
  double bowShare() {
    return bowShare;
  }

  /** The sheet with what a bag adds to the pour, once the bow of wood joists has had its part. */
  DataSheet sheet() {
    return bowShare > 0
        ? stiffSheet.yielding(stiffSheet.yieldPerBag() / (1 + bowShare))
        : stiffSheet;
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
    return other == field ? draws : other.volumes(realisations);
  }

  List<Polygon> polygons() {
    return fitted.polygons();
  }

  /** Nothing but a minimum depth is wished of the plane of an option. */
  TargetWish plainly(TargetShape shape) {
    return TargetWish.plain(shape, request.target().maximumSlope(), request.target().sharing());
  }
}
