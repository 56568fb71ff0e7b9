package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.Room;
import dev.fillplane.surface.CellSize;
import dev.fillplane.surface.FittedSurface;
import dev.fillplane.surface.FloorFit;
import dev.fillplane.surface.FloorPoints;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.SpotsCheck;
import dev.fillplane.surface.StepCheck;
import dev.fillplane.surface.SurfaceWish;
import dev.fillplane.survey.Elevations;
import dev.fillplane.survey.SurveyAdjustment;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Polygon;

/**
 * The floor of a request between its readings.
 *
 * @param polygons of the rooms
 * @param readings that lie in them
 * @param elevations of the whole survey, with its suspects
 * @param surface through the readings
 * @param sample of the surface over the rooms
 */
record FittedFloor(
    List<Polygon> polygons,
    RoomReadings readings,
    Elevations elevations,
    FittedSurface surface,
    FloorSample sample) {

  /** Places at which the mean deviation is taken, about. */
  private static final int DEVIATIONS = 200;

  private static final Place ROOT = Place.root();

  /**
   * Fits the floor of a request whose quantities and rooms are checked.
   *
   * @throws dev.fillplane.finding.FindingsException if the findings have errors, from here or from
   *     before
   */
  static FittedFloor of(PlanRequest request, Findings findings) {
    Place survey = ROOT.at("survey");
    Elevations adjusted = SurveyAdjustment.adjust(request.survey(), survey, findings);
    RoomReadings readings = RoomReadings.of(request, adjusted, findings);
    findings.throwIfErrors();
    SpotsCheck.check(readings.spots(), survey, findings);
    double cell =
        CellSize.choose(request.rooms(), request.grid().cell(), ROOT.at("grid"), findings);
    findings.throwIfErrors();
    List<Polygon> polygons =
        request.rooms().stream().map(Room::outline).map(o -> o.polygon()).toList();
    Place place = ROOT.at("surface");
    SurfaceWish wish =
        StepCheck.told(request.surface(), readings.spots(), polygons, place.at("steps"), findings);
    findings.throwIfErrors();
    FittedSurface surface = FloorFit.fit(readings.spots(), wish, polygons, place, findings);
    return new FittedFloor(
        polygons,
        readings,
        readings.withSuspects(adjusted, surface.leaveOneOut()),
        surface,
        FloorSample.of(request.rooms(), surface, cell));
  }

  /** Mean standard deviation of the floor, over places spread evenly through the rooms. */
  double meanDeviation() {
    FloorPoints points = sample.points();
    int step = Math.max(1, points.count() / DEVIATIONS);
    int[] chosen = IntStream.iterate(0, i -> i < points.count(), i -> i + step).toArray();
    double[] x = Arrays.stream(chosen).mapToDouble(i -> points.x()[i]).toArray();
    double[] y = Arrays.stream(chosen).mapToDouble(i -> points.y()[i]).toArray();
    double sum = 0;
    for (double deviation : surface.deviations(x, y)) {
      sum += deviation;
    }
    return x.length > 0 ? sum / x.length : 0;
  }
}
