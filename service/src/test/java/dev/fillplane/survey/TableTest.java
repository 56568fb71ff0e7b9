package dev.fillplane.survey;

import static dev.fillplane.survey.Column.ELEVATION;
import static dev.fillplane.survey.Column.READING;
import static dev.fillplane.survey.Column.X;
import static dev.fillplane.survey.Column.Y;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tables and elevations that are known already. */
class TableTest {

  private static void check(String findings, SurveyBuilder survey) {
    assertEquals("[" + findings + "]", survey.findings().toString());
  }

  private static SurveyBuilder readings() {
    return new SurveyBuilder()
        .table(List.of(READING, X, Y), 1.200, 0.5, 0.6, 1.203, 1.5, 1.6, 1.201, 2.5, 2.6);
  }

  private static SurveyBuilder elevations() {
    return new SurveyBuilder().table(List.of(X, Y, ELEVATION), 0.5, 0.6, 0.002, 1.5, 1.6, -0.001);
  }

  @Test
  void rowsAreOneSetup() {
    Elevations elevations = readings().benchmark("2", 0).adjust();
    assertEquals(1.203, elevations.setups().get(0).planeElevation(), 1e-12);
    AdjustedPoint first = elevations.points().get(0);
    assertEquals("1", first.point());
    assertEquals(0.5, first.x().getAsDouble(), 0);
    assertEquals(0.6, first.y().getAsDouble(), 0);
    assertEquals(0.003, first.elevation(), 1e-12);
    assertEquals(0.001 * Math.sqrt(2), first.deviation(), 1e-12);
  }

  @Test
  void rowsKeepTheirNumbersWhenOneIsIgnored() {
    Elevations elevations = readings().ignore("2").adjust();
    assertEquals(
        List.of("1", "3"), elevations.points().stream().map(AdjustedPoint::point).toList());
    assertEquals(-1.201, elevations.points().get(1).elevation(), 1e-12);
    assertEquals(2.5, elevations.points().get(1).x().getAsDouble(), 0);
  }

  @Test
  void namesThatAreNoRows() {
    for (String name : List.of("0", "4", "01", "-1", "x", "", "1.0", "99999999999")) {
      check("unknown-benchmark #/survey/benchmarks/0/point", readings().benchmark(name, 0));
    }
  }

  @Test
  void elevationsStandAsTheyAre() {
    Elevations table = elevations().readingError(0.002).adjust();
    Elevations list =
        new SurveyBuilder()
            .elevation("1", 0.5, 0.6, 0.002)
            .elevation("2", 1.5, 1.6, -0.001)
            .readingError(0.002)
            .adjust();
    assertEquals(list, table);
    assertEquals(-0.001, list.points().get(1).elevation(), 0);
    assertEquals(0.002, list.points().get(1).deviation(), 0);
    assertTrue(list.setups().isEmpty() && list.misclosure().isEmpty());
  }

  @Test
  void elevationsMayBeIgnoredButNotRepeated() {
    assertEquals(1, elevations().ignore("1").adjust().points().size());
    check("no-readings #/survey", elevations().ignore("1").ignore("2"));
    check(
        "point-repeated #/survey/elevations/1/point",
        new SurveyBuilder().elevation("a", 0, 0, 0).elevation("a", 1, 0, 0));
    SurveyBuilder list = new SurveyBuilder().elevation("a", 0, 0, 0).elevation("b", 1, 0, 0.004);
    assertEquals(0.004, list.ignore("a").adjust().points().get(0).elevation(), 0);
  }

  @Test
  void benchmarksDoNotMoveElevations() {
    check("benchmark-not-used #/survey/benchmarks/0", elevations().benchmark("1", 0));
  }

  @Test
  void columnsMustFit() {
    check(
        "column-repeated #/survey/table/columns/2",
        new SurveyBuilder().table(List.of(X, Y, X, READING), 1, 1, 1, 1));
    check(
        "column-missing #/survey/table/columns",
        new SurveyBuilder().table(List.of(X, READING), 1, 1));
    check(
        "table-height-column #/survey/table/columns",
        new SurveyBuilder().table(List.of(X, Y), 1, 1));
    check(
        "table-height-column #/survey/table/columns",
        new SurveyBuilder().table(List.of(X, Y, READING, ELEVATION), 1, 1, 1, 1));
    check(
        "column-missing #/survey/table/columns, column-missing #/survey/table/columns,"
            + " table-height-column #/survey/table/columns",
        new SurveyBuilder().table(List.of()));
  }

  @Test
  void valuesMustMakeWholeRows() {
    check(
        "table-row-incomplete #/survey/table/values",
        new SurveyBuilder().table(List.of(X, Y, READING), 1, 1, 1, 1));
    check("no-readings #/survey", new SurveyBuilder().table(List.of(X, Y, READING)));
  }

  @Test
  void rowsInOnePlaceThatDisagree() {
    check(
        "readings-disagree #/survey/table/values/5",
        new SurveyBuilder().table(List.of(X, Y, READING), 1, 1, 1, 1, 1, 1.005));
  }

  /** A crowd in one place neither takes for ever nor buries the caller in warnings. */
  @Test
  void manyRowsInOnePlace() {
    double[] values = new double[60_000];
    Arrays.setAll(values, i -> i % 3 == 2 ? 0.01 * (i / 3 % 2) : 1);
    SurveyBuilder survey = new SurveyBuilder().table(List.of(X, Y, READING), values);
    assertEquals(NearPoints.WARNINGS, survey.findings().size());
  }
}
