package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Collects the rows of a table to a survey, setups in the order in which they are met. */
final class CsvSurvey {

  /** As many setups and benchmarks as a request may have. */
  static final int MOST_SETUPS = 300;

  static final int MOST_BENCHMARKS = 10_000;

  private final Findings findings;
  private final Map<String, List<Reading>> setups = new LinkedHashMap<>();
  private final Map<String, Benchmark> benchmarks = new LinkedHashMap<>();
  private final List<KnownPoint> elevations = new ArrayList<>();
  private final Map<String, Integer> lines = new HashMap<>();
  private final Map<String, Reading> placed = new HashMap<>();

  CsvSurvey(Findings findings) {
    this.findings = findings;
  }

  /** Adds an elevation; an error if its name was met before. */
  void add(CsvText.Row row, KnownPoint point) {
    Integer before = lines.putIfAbsent(point.point(), row.line());
    if (before != null) {
      findings.error(
          "csv-point-repeated", row.place().at("point"), "point", point.point(), "line", before);
    }
    elevations.add(point);
  }

  /**
   * Adds a reading of {@code setup}.
   *
   * @param whole whether both of x and y are told, or none
   */
  void add(CsvText.Row row, String setup, Reading reading, boolean whole) {
    if (!whole) {
      String missing = reading.x().isPresent() ? "y" : "x";
      findings.error("x-without-y", row.place().at(missing), "point", reading.point());
    } else if (reading.x().isPresent() && reading.y().isPresent()) {
      checkPlace(row.place().at("x"), reading);
    }
    if (!setups.containsKey(setup) && setups.size() == MOST_SETUPS) {
      findings.error(
          "csv-too-many", row.place().at("setup"), "what", "setups", "limit", MOST_SETUPS);
      return;
    }
    setups.computeIfAbsent(setup, id -> new ArrayList<>()).add(reading);
  }

  private void checkPlace(Place there, Reading reading) {
    Reading first = placed.putIfAbsent(reading.point(), reading);
    if (first == null) {
      return;
    }
    double apart =
        Math.hypot(
            reading.x().getAsDouble() - first.x().getAsDouble(),
            reading.y().getAsDouble() - first.y().getAsDouble());
    if (apart > PointPositions.TOLERANCE) {
      findings.error(
          "point-in-two-places",
          there,
          "point",
          reading.point(),
          "apart",
          Amount.of(apart, Dimension.PLAN));
    }
  }

  /** Adds a benchmark; an error if its point has another elevation already. */
  void add(CsvText.Row row, Benchmark benchmark) {
    Place there = row.place().at("benchmark");
    Benchmark before = benchmarks.putIfAbsent(benchmark.point(), benchmark);
    if (before != null && before.elevation() != benchmark.elevation()) {
      findings.error("benchmark-repeated", there, "point", benchmark.point());
    }
    if (benchmarks.size() > MOST_BENCHMARKS) {
      benchmarks.remove(benchmark.point());
      findings.error("csv-too-many", there, "what", "benchmarks", "limit", MOST_BENCHMARKS);
    }
  }

  Survey survey() {
    OptionalDouble none = OptionalDouble.empty();
    List<Setup> all = new ArrayList<>();
    setups.forEach((id, readings) -> all.add(new Setup(id, readings, none, none, none)));
    return new Survey(
        all,
        List.copyOf(benchmarks.values()),
        elevations,
        Optional.empty(),
        null,
        null,
        none,
        none,
        List.of());
  }
}
