package dev.fillplane.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.FindingsException;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Every finding of a survey at its place. */
class SurveyFindingsTest {

  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static void check(String findings, SurveyBuilder survey) {
    assertEquals("[" + findings + "]", survey.findings().toString());
  }

  private static SurveyBuilder setup() {
    return new SurveyBuilder().setup("A").read("1", 0, 0, 1.0).read("2", 1, 0, 1.0);
  }

  @Test
  void nothingIsWrong() {
    check("", setup());
  }

  @Test
  void errorsEndTheWork() {
    Findings findings = new Findings();
    findings.error("no-readings", SurveyBuilder.PLACE);
    assertThrows(
        FindingsException.class,
        () -> SurveyAdjustment.adjust(setup().survey(), SurveyBuilder.PLACE, findings));
  }

  @Test
  void nothingGiven() {
    check("no-readings #/survey", new SurveyBuilder());
  }

  @Test
  void givenTwice() {
    SurveyBuilder survey = setup().elevation("1", 0, 0, 0);
    check("survey-given-twice #/survey", survey);
    assertEquals("setups, elevations", survey.allFindings().get(0).values().get("parts"));
  }

  @Test
  void nothingLeft() {
    check("no-readings #/survey", setup().ignore("1").ignore("2"));
  }

  @Test
  void emptySetupIsLeftOut() {
    SurveyBuilder survey = setup().setup("B").read("3", 1.0).ignore("3");
    check("setup-without-readings #/survey/setups/1", survey);
    assertEquals(1, survey.adjust().setups().size());
  }

  @Test
  void setupIdTwice() {
    List<Reading> readings = List.of(new Reading("1", NONE, NONE, 1.0));
    check(
        "setup-repeated #/survey/setups/1/id",
        setup().add(new Setup("A", readings, NONE, NONE, NONE)));
  }

  @Test
  void benchmarkOfAnUnreadPoint() {
    check(
        "unknown-benchmark #/survey/benchmarks/1/point",
        setup().benchmark("1", 0).benchmark("9", 0));
  }

  @Test
  void benchmarkTwice() {
    check(
        "benchmark-repeated #/survey/benchmarks/1/point",
        setup().benchmark("1", 0).benchmark("1", 0.002));
  }

  @Test
  void ignoredBenchmarkHoldsNothing() {
    SurveyBuilder survey = setup().benchmark("1", 5).ignore("1");
    check("", survey);
    assertEquals(-1.0, survey.adjust().points().get(0).elevation(), 0);
  }

  @Test
  void setupsThatShareNothing() {
    SurveyBuilder survey =
        setup().setup("B").read("3", 1.0).setup("C").read("3", 1.0).setup("D").read("2", 1.0);
    check("setups-not-connected #/survey/setups/1, setups-not-connected #/survey/setups/2", survey);
    assertEquals("B", survey.allFindings().get(0).values().get("setup"));
  }

  @Test
  void benchmarksConnectSetups() {
    check("", setup().setup("B").read("3", 1.0).benchmark("1", 0).benchmark("3", 0));
    check(
        "setups-not-connected #/survey/setups/0",
        setup().setup("B").read("3", 1.0).benchmark("3", 0));
  }

  @Test
  void oneCoordinateOnly() {
    check(
        "x-without-y #/survey/setups/0/readings/2/x",
        setup().read("3", OptionalDouble.of(1), NONE, 1.0));
    check(
        "x-without-y #/survey/setups/0/readings/2/y",
        setup().read("3", NONE, OptionalDouble.of(1), 1.0));
  }

  @Test
  void pointInTwoPlaces() {
    check(
        "point-in-two-places #/survey/setups/1/readings/0",
        setup().setup("B").read("1", 0.011, 0, 1.0));
    check("", setup().setup("B").read("1", 0.009, 0, 1.0));
    check("", setup().setup("B").read("1", 1.0).read("1", 0.009, 0, 1.0));
    check("", setup().setup("B").read("1", 0.011, 0, 1.0).read("2", 1.0).ignore("1"));
  }

  @Test
  void laserMoved() {
    SurveyBuilder survey = setup().read("1", 0, 0, 1.0043);
    check("laser-moved #/survey/setups/0/readings/2/reading", survey);
    Map<String, Object> values = survey.allFindings().get(0).values();
    assertEquals("[point, setup, difference]", values.keySet().toString());
    assertEquals(0.0043, ((Amount) values.get("difference")).si(), 1e-12);
    check("", setup().read("1", 0, 0, 1.0042));
    check("", survey.readingError(0.002));
    check("", setup().setup("B", 0.002).read("1", 1.0).read("1", 1.0043));
  }

  /** Readings that are left out do not shift the places of the others. */
  @Test
  void placesAreThoseOfTheRequest() {
    check(
        "laser-moved #/survey/setups/0/readings/3/reading",
        setup().read("3", 1.0).read("2", 1, 0, 1.005).ignore("1"));
  }

  @Test
  void twoPointsInOnePlaceDisagree() {
    SurveyBuilder survey = setup().read("3", 0.0007, 0.0007, 1.0043);
    check("readings-disagree #/survey/setups/0/readings/2", survey);
    assertEquals("1", survey.allFindings().get(0).values().get("other"));
    check("", setup().read("3", 0.0007, 0.0007, 1.0042));
    check("", setup().read("3", 0.0008, 0.0008, 1.0043));
    check("", setup().setup("B").read("2", 1.0).read("3", 0, 0, 1.0043));
  }

  /** Wherever the two lie on the lattice that finds them. */
  @Test
  void twoPointsInOnePlaceDisagreeAnywhere() {
    for (int i = 0; i < 400; i++) {
      double x = -0.003 + 0.00031 * (i % 20);
      double y = 5 - 0.003 + 0.00031 * (i / 20);
      check(
          "readings-disagree #/survey/setups/0/readings/1",
          new SurveyBuilder().setup("A").read("1", x, y, 1).read("2", x - 7e-4, y + 7e-4, 1.01));
    }
  }

  @Test
  void unknownIgnoredPoint() {
    check("unknown-ignored-point #/survey/ignore/0", setup().ignore("9"));
  }

  @Test
  void readingErrorOutOfRange() {
    check("out-of-range #/survey/readingError", setup().readingError(0));
    check("out-of-range #/survey/readingError", setup().readingError(0.051));
    check("out-of-range #/survey/setups/1/error", setup().setup("B", 0.051).read("1", 1.0));
    check("", setup().setup("B", 0.05).read("1", 1.0));
  }

  /** What the check of single quantities has said is not said again. */
  @Test
  void readingErrorIsToldOnce() {
    Findings findings = new Findings();
    Place there = SurveyBuilder.PLACE.at("readingError");
    findings.error("out-of-range", there);
    Survey survey = setup().readingError(0).survey();
    assertThrows(
        FindingsException.class,
        () -> SurveyAdjustment.adjust(survey, SurveyBuilder.PLACE, findings));
    assertEquals(1, findings.errors().size());
  }
}
