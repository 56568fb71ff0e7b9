package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Whether a survey makes sense before anything is computed from it. */
final class SurveyCheck {

  /** Smallest standard deviation of a reading that is taken. */
  static final double SMALLEST_ERROR = 1e-5;

  /** Largest standard deviation of a reading that is taken. */
  static final double LARGEST_ERROR = 0.05;

  /** Largest tilt that is taken; a laser outside it levels itself no more. */
  static final double LARGEST_TILT = 0.005;

  private final Survey survey;
  private final Place place;
  private final Findings findings;

  SurveyCheck(Survey survey, Place place, Findings findings) {
    this.survey = survey;
    this.place = place;
    this.findings = findings;
  }

  /** Notes errors of the survey as a whole and tells whether it can be read on. */
  boolean readable() {
    errorInRange(survey.readingError(), place.at("readingError"));
    inRange(
        "tilt of a laser",
        Amount.of(survey.laserTilt(), Dimension.SLOPE),
        0,
        LARGEST_TILT,
        place.at("laserTilt"));
    List<Setup> setups = survey.setups();
    for (int s = 0; s < setups.size(); s++) {
      Place error = place.at("setups").at(s).at("error");
      setups.get(s).error().ifPresent(value -> errorInRange(value, error));
    }
    int before = findings.errors().size();
    HeightCheck.check(survey, place, findings);
    boolean high = findings.errors().size() > before;
    boolean one = oneForm();
    boolean fits =
        survey.table().map(t -> TableReader.check(t, place.at("table"), findings)).orElse(true);
    return one && fits && !high;
  }

  private boolean oneForm() {
    boolean[] given = {
      !survey.setups().isEmpty(), !survey.elevations().isEmpty(), survey.table().isPresent()
    };
    int forms = given[0] ? 1 : 0;
    forms += given[1] ? 1 : 0;
    forms += given[2] ? 1 : 0;
    if (forms == 0) {
      findings.error("no-readings", place);
    } else if (forms > 1) {
      findings.error("survey-given-twice", place, "parts", partsGiven(given));
    }
    return forms == 1;
  }

  private static String partsGiven(boolean[] given) {
    Stream<String> parts =
        Stream.of(given[0] ? "setups" : "", given[1] ? "elevations" : "", given[2] ? "table" : "");
    return String.join(", ", parts.filter(part -> !part.isEmpty()).toList());
  }

  private void errorInRange(double error, Place there) {
    inRange(
        "error of a reading",
        Amount.of(error, Dimension.HEIGHT),
        SMALLEST_ERROR,
        LARGEST_ERROR,
        there);
  }

  /** Whoever checks single quantities may have said the same already. */
  private void inRange(String name, Amount told, double from, double to, Place there) {
    boolean inRange = told.si() >= from && told.si() <= to;
    if (!inRange && findings.errors().stream().noneMatch(one -> one.place().equals(there))) {
      findings.error(
          "out-of-range",
          there,
          "name",
          name,
          "told",
          told,
          "from",
          Amount.of(from, told.dimension()),
          "to",
          Amount.of(to, told.dimension()));
    }
  }

  /** Which points are left out, by number; warns of names that are no points. */
  boolean[] ignored(PointNames names) {
    boolean[] ignored = new boolean[names.count()];
    for (int i = 0; i < survey.ignore().size(); i++) {
      String name = survey.ignore().get(i);
      int point = names.find(name);
      if (point >= 0) {
        ignored[point] = true;
      } else {
        findings.warning("unknown-ignored-point", place.at("ignore").at(i), "point", name);
      }
    }
    return ignored;
  }

  /** Elevation of each benchmark by number of its point; NaN for all other points. */
  double[] held(PointNames names) {
    double[] held = new double[names.count()];
    Arrays.fill(held, Double.NaN);
    for (int i = 0; i < survey.benchmarks().size(); i++) {
      Benchmark benchmark = survey.benchmarks().get(i);
      Place there = place.at("benchmarks").at(i).at("point");
      int point = names.find(benchmark.point());
      if (point < 0) {
        findings.error("unknown-benchmark", there, "point", benchmark.point());
      } else if (!Double.isNaN(held[point])) {
        findings.error("benchmark-repeated", there, "point", benchmark.point());
      } else {
        held[point] = benchmark.elevation();
      }
    }
    return held;
  }
}
