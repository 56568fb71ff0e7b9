package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;

/** Whether heights are heights of a building at all; the first of each list that is not is told. */
public final class HeightCheck {

  /** From the zero of the elevations; beyond, digits are lost. */
  public static final double FURTHEST = 10_000;

  private final Place place;
  private final Findings findings;

  private HeightCheck(Place place, Findings findings) {
    this.place = place;
    this.findings = findings;
  }

  /** Notes an error for each list of a survey with a height too far. */
  static void check(Survey survey, Place place, Findings findings) {
    HeightCheck check = new HeightCheck(place, findings);
    for (int s = 0; s < survey.setups().size(); s++) {
      Setup setup = survey.setups().get(s);
      Place there = place.at("setups").at(s).at("readings");
      check.list(
          setup.readings().size(),
          i -> setup.readings().get(i).reading(),
          i -> there.at(i).at("reading"));
    }
    check.list(
        survey.elevations().size(),
        i -> survey.elevations().get(i).elevation(),
        i -> place.at("elevations").at(i).at("elevation"));
    check.list(
        survey.benchmarks().size(),
        i -> survey.benchmarks().get(i).elevation(),
        i -> place.at("benchmarks").at(i).at("elevation"));
    survey.table().ifPresent(check::table);
  }

  private void table(Table table) {
    int width = table.columns().size();
    for (Column column : new Column[] {Column.READING, Column.ELEVATION}) {
      int offset = table.columns().indexOf(column);
      list(
          offset < 0 ? 0 : table.values().length / width,
          i -> table.values()[i * width + offset],
          i -> place.at("table").at("values").at(i * width + offset));
    }
  }

  private void list(int count, IntToDoubleFunction height, IntFunction<Place> where) {
    for (int i = 0; i < count; i++) {
      if (Math.abs(height.applyAsDouble(i)) > FURTHEST) {
        error(height.applyAsDouble(i), where.apply(i));
        return;
      }
    }
  }

  private void error(double told, Place where) {
    findings.error(
        "out-of-range",
        where,
        "name",
        "height",
        "told",
        Amount.of(told, Dimension.HEIGHT),
        "from",
        Amount.of(-FURTHEST, Dimension.HEIGHT),
        "to",
        Amount.of(FURTHEST, Dimension.HEIGHT));
  }
}
