package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Elevations that were measured already: they stand as they are, each as sure as one reading. */
final class KnownElevations {

  private final Survey survey;
  private final Place place;
  private final Findings findings;
  private final SurveyCheck check;

  KnownElevations(Survey survey, Place place, Findings findings) {
    this.survey = survey;
    this.place = place;
    this.findings = findings;
    check = new SurveyCheck(survey, place, findings);
  }

  /** The list {@code elevations}; errors where a name comes twice or nothing is left. */
  Elevations ofList() {
    PointNames.Given names = new PointNames.Given();
    for (int i = 0; i < survey.elevations().size(); i++) {
      String name = survey.elevations().get(i).point();
      if (names.find(name) >= 0) {
        Place there = place.at("elevations").at(i).at("point");
        findings.error("point-repeated", there, "point", name);
      }
      names.number(name);
    }
    boolean[] ignored = check.ignored(names);
    List<AdjustedPoint> points = new ArrayList<>();
    for (KnownPoint one : survey.elevations()) {
      if (!ignored[names.find(one.point())]) {
        points.add(point(one.point(), one.x(), one.y(), one.elevation()));
      }
    }
    return elevations(points);
  }

  /** The rows of a table with a column {@code elevation}. */
  Elevations ofTable(Table table) {
    PointNames names = PointNames.rows(table.rows());
    boolean[] ignored = check.ignored(names);
    double[] x = TableReader.column(table, Column.X);
    double[] y = TableReader.column(table, Column.Y);
    double[] elevation = TableReader.column(table, Column.ELEVATION);
    List<AdjustedPoint> points = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      if (!ignored[i]) {
        points.add(point(names.name(i), x[i], y[i], elevation[i]));
      }
    }
    return elevations(points);
  }

  private AdjustedPoint point(String name, double x, double y, double elevation) {
    return new AdjustedPoint(
        name, OptionalDouble.of(x), OptionalDouble.of(y), elevation, survey.readingError(), 0);
  }

  private Elevations elevations(List<AdjustedPoint> points) {
    if (points.isEmpty()) {
      findings.error("no-readings", place);
    }
    for (int i = 0; i < survey.benchmarks().size(); i++) {
      Benchmark one = survey.benchmarks().get(i);
      findings.warning("benchmark-not-used", place.at("benchmarks").at(i), "point", one.point());
    }
    return Elevations.of(points, List.of());
  }
}
