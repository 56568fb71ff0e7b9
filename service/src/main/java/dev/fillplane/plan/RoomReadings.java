package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.Floorplan;
import dev.fillplane.room.Room;
import dev.fillplane.surface.LeaveOneOut;
import dev.fillplane.surface.Spots;
import dev.fillplane.survey.AdjustedPoint;
import dev.fillplane.survey.Elevations;
import dev.fillplane.survey.Suspect;
import dev.fillplane.target.Bound;
import dev.fillplane.target.FoundTarget;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The readings that lie in a room; the others take part in the adjustment of the survey only.
 *
 * @param names of the points
 * @param spots where and how high they are
 * @param thin whether a room has too few of them to tell how flat it is
 */
record RoomReadings(List<String> names, Spots spots, boolean thin) {

  private static final double SUSPECT = 3;
  private static final int NAMED = 5;
  private static final Place SURVEY = Place.root().at("survey");

  /** Sorts out the points of an adjusted survey, with findings about what is odd. */
  static RoomReadings of(PlanRequest request, Elevations elevations, Findings findings) {
    Floorplan floorplan = new Floorplan(request.rooms());
    List<AdjustedPoint> inside = new ArrayList<>();
    List<String> outside = new ArrayList<>();
    int[] count = new int[request.rooms().size()];
    for (AdjustedPoint point : elevations.points()) {
      if (point.x().isEmpty()) {
        continue;
      }
      var room = floorplan.roomAt(point.x().getAsDouble(), point.y().getAsDouble());
      if (room.isPresent()) {
        count[room.getAsInt()]++;
        inside.add(point);
      } else {
        outside.add(point.point());
      }
    }
    warn(request.rooms(), count, outside, inside.size(), findings);
    double variance = request.survey().readingError() * request.survey().readingError();
    Spots spots = spots(inside, variance);
    SurveyCautions.warnOfFloorBeyond(request.rooms(), spots, findings);
    return new RoomReadings(
        inside.stream().map(AdjustedPoint::point).toList(),
        spots,
        SurveyCautions.isThin(request.rooms(), count));
  }

  private static void warn(
      List<Room> rooms, int[] count, List<String> outside, int inside, Findings findings) {
    if (inside == 0) {
      findings.error("no-reading-in-a-room", SURVEY, "outside", outside.size());
      return;
    }
    if (!outside.isEmpty()) {
      String names = outside.stream().limit(NAMED).collect(Collectors.joining(", "));
      findings.warning("readings-outside", SURVEY, "count", outside.size(), "points", names);
    }
    for (int i = 0; i < count.length; i++) {
      if (count[i] == 0) {
        findings.warning(
            "room-without-readings", Place.root().at("rooms").at(i), "room", rooms.get(i).id());
      }
    }
    SurveyCautions.warnOfFew(rooms, count, findings);
  }

  private static Spots spots(List<AdjustedPoint> points, double variance) {
    int n = points.size();
    double[] x = new double[n];
    double[] y = new double[n];
    double[] elevation = new double[n];
    double[] variances = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = points.get(i).x().orElseThrow();
      y[i] = points.get(i).y().orElseThrow();
      elevation[i] = points.get(i).elevation();
      variances[i] = variance;
    }
    return new Spots(x, y, elevation, variances);
  }

  /** The survey with the points that the surface does not believe beside those of its loops. */
  Elevations withSuspects(Elevations elevations, LeaveOneOut others) {
    List<Suspect> suspects = new ArrayList<>(elevations.suspects());
    Set<String> known = suspects.stream().map(Suspect::point).collect(Collectors.toSet());
    for (int i = 0; i < names.size(); i++) {
      double standardized = others.standardized()[i];
      if (others.told()[i] && Math.abs(standardized) > SUSPECT && !known.contains(names.get(i))) {
        double residual = others.residual()[i];
        suspects.add(
            new Suspect(
                names.get(i), Math.abs(standardized), residual, spots.elevation()[i] - residual));
      }
    }
    suspects.sort(Comparator.comparingDouble(Suspect::standardized).reversed());
    return elevations.withSuspects(suspects);
  }

  /** Warns where a reading that nobody believes holds the target up. */
  void warnOfBoundSuspects(FoundTarget target, Elevations elevations, Findings findings) {
    Set<String> suspects =
        elevations.suspects().stream()
            .map(Suspect::point)
            .collect(Collectors.toCollection(TreeSet::new));
    for (Bound bound : target.boundBy()) {
      bound
          .point()
          .filter(suspects::contains)
          .ifPresent(point -> findings.warning("suspect-holds-target", SURVEY, "point", point));
    }
  }
}
