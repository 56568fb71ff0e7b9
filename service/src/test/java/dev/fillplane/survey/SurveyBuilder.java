package dev.fillplane.survey;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.FindingsException;
import dev.fillplane.finding.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Surveys in few words. Everything is metres. */
final class SurveyBuilder {

  static final Place PLACE = Place.root().at("survey");

  private final Map<String, List<Reading>> readings = new LinkedHashMap<>();
  private final Map<String, OptionalDouble> errors = new LinkedHashMap<>();
  private final List<Setup> setups = new ArrayList<>();
  private final List<Benchmark> benchmarks = new ArrayList<>();
  private final List<KnownPoint> elevations = new ArrayList<>();
  private final List<String> ignored = new ArrayList<>();
  private Optional<Table> table = Optional.empty();
  private Double readingError;
  private Double laserTilt = 0.0;
  private final Map<String, double[]> lasers = new LinkedHashMap<>();
  private OptionalDouble limit = OptionalDouble.empty();
  private OptionalDouble loopLength = OptionalDouble.empty();
  private String current;

  /** What comes next is read in this setup. */
  SurveyBuilder setup(String id) {
    return setup(id, OptionalDouble.empty());
  }

  SurveyBuilder setup(String id, double error) {
    return setup(id, OptionalDouble.of(error));
  }

  private SurveyBuilder setup(String id, OptionalDouble error) {
    current = id;
    readings.put(id, new ArrayList<>());
    errors.put(id, error);
    return this;
  }

  SurveyBuilder read(String point, double reading) {
    return read(point, OptionalDouble.empty(), OptionalDouble.empty(), reading);
  }

  SurveyBuilder read(String point, double x, double y, double reading) {
    return read(point, OptionalDouble.of(x), OptionalDouble.of(y), reading);
  }

  SurveyBuilder read(String point, OptionalDouble x, OptionalDouble y, double reading) {
    readings.get(current).add(new Reading(point, x, y, reading));
    return this;
  }

  /** A setup beside the others, whatever its id. */
  SurveyBuilder add(Setup setup) {
    setups.add(setup);
    return this;
  }

  SurveyBuilder benchmark(String point, double elevation) {
    benchmarks.add(new Benchmark(point, elevation));
    return this;
  }

  SurveyBuilder elevation(String point, double x, double y, double elevation) {
    elevations.add(new KnownPoint(point, x, y, elevation));
    return this;
  }

  SurveyBuilder table(List<Column> columns, double... values) {
    table = Optional.of(new Table(columns, values));
    return this;
  }

  SurveyBuilder readingError(double error) {
    readingError = error;
    return this;
  }

  SurveyBuilder misclosureLimit(double metres) {
    limit = OptionalDouble.of(metres);
    return this;
  }

  SurveyBuilder loopLength(double metres) {
    loopLength = OptionalDouble.of(metres);
    return this;
  }

  SurveyBuilder ignore(String point) {
    ignored.add(point);
    return this;
  }

  private Setup setup(String id, List<Reading> list) {
    double[] at = lasers.get(id);
    OptionalDouble x = at == null ? OptionalDouble.empty() : OptionalDouble.of(at[0]);
    OptionalDouble y = at == null ? OptionalDouble.empty() : OptionalDouble.of(at[1]);
    return new Setup(id, list, errors.get(id), x, y);
  }

  /** Lasers may be tilted by this; level unless told. */
  SurveyBuilder laserTilt(double slope) {
    laserTilt = slope;
    return this;
  }

  /** Where the laser of the present setup stands. */
  SurveyBuilder laserAt(double x, double y) {
    lasers.put(current, new double[] {x, y});
    return this;
  }

  Survey survey() {
    List<Setup> all = new ArrayList<>();
    readings.forEach((id, list) -> all.add(setup(id, list)));
    all.addAll(setups);
    return new Survey(
        all, benchmarks, elevations, table, readingError, laserTilt, limit, loopLength, ignored);
  }

  Elevations adjust() {
    return SurveyAdjustment.adjust(survey(), PLACE, new Findings());
  }

  /** The findings, errors and warnings, as {@code code pointer}. */
  List<String> findings() {
    return allFindings().stream().map(one -> one.code() + " " + one.place()).toList();
  }

  List<Finding> allFindings() {
    Findings findings = new Findings();
    try {
      SurveyAdjustment.adjust(survey(), PLACE, findings);
    } catch (FindingsException e) {
      // What it carries is in the findings.
    }
    List<Finding> all = new ArrayList<>(findings.errors());
    all.addAll(findings.warnings());
    return all;
  }

  static AdjustedPoint point(Elevations elevations, String name) {
    return elevations.points().stream().filter(p -> p.point().equals(name)).findFirst().get();
  }

  static double plane(Elevations elevations, String setup) {
    return elevations.setups().stream()
        .filter(s -> s.id().equals(setup))
        .findFirst()
        .get()
        .planeElevation();
  }
}
