package dev.fillplane.survey;

import static dev.fillplane.survey.SurveyBuilder.plane;
import static dev.fillplane.survey.SurveyBuilder.point;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;

/** Closed forms for one and two setups. */
class TwoSetupsTest {

  private static final double EXACT = 1e-12;

  private static SurveyBuilder one() {
    return new SurveyBuilder().setup("A").read("P", 1.200).read("Q", 1.203);
  }

  @Test
  void withoutBenchmarkTheFirstPlaneIsZero() {
    Elevations elevations = one().adjust();
    assertEquals(0, plane(elevations, "A"), 0);
    assertEquals(-1.200, point(elevations, "P").elevation(), 0);
    assertEquals(0.001, point(elevations, "Q").deviation(), EXACT);
  }

  @Test
  void benchmarkIsHeldAndItsReadingAddsToTheDeviations() {
    Elevations elevations = one().benchmark("P", 10).adjust();
    assertEquals(11.200, plane(elevations, "A"), EXACT);
    assertEquals(10, point(elevations, "P").elevation(), 0);
    assertEquals(0, point(elevations, "P").deviation(), 0);
    assertEquals(9.997, point(elevations, "Q").elevation(), EXACT);
    assertEquals(0.001 * Math.sqrt(2), point(elevations, "Q").deviation(), EXACT);
  }

  /** Plane B is the mean of both differences; P = -3/4 rAP - 1/4 rBP + 1/4 rBQ - 1/4 rAQ. */
  @Test
  void twoSetupsShareTwoPoints() {
    Elevations elevations =
        one().setup("B").read("P", 1.500).read("Q", 1.505).read("R", 1.400).adjust();
    assertEquals(0.301, plane(elevations, "B"), EXACT);
    assertEquals(-1.1995, point(elevations, "P").elevation(), EXACT);
    assertEquals(-1.2035, point(elevations, "Q").elevation(), EXACT);
    assertEquals(-1.099, point(elevations, "R").elevation(), EXACT);
    assertEquals(0.001 * Math.sqrt(0.75), point(elevations, "P").deviation(), EXACT);
    assertEquals(0.001 * Math.sqrt(2), point(elevations, "R").deviation(), EXACT);
    assertEquals(0.0005, point(elevations, "P").residual(), EXACT);
    assertEquals(0, point(elevations, "R").residual(), EXACT);
    assertEquals(0.002, Math.abs(elevations.misclosure().get().value()), EXACT);
  }

  /** A setup of four times the variance counts a quarter at a point both read. */
  @Test
  void anErrorOfItsOwnWeighsASetup() {
    Elevations elevations =
        new SurveyBuilder()
            .setup("A")
            .read("B1", 1.000)
            .read("B2", 1.000)
            .setup("B", 0.002)
            .read("B1", 1.005)
            .benchmark("B1", 0)
            .benchmark("B2", 0.002)
            .adjust();
    assertEquals(1.001, plane(elevations, "A"), EXACT);
    assertEquals(1.005, plane(elevations, "B"), EXACT);
    Elevations shared = one().setup("B", 0.002).read("P", 1.500).read("Q", 1.505).adjust();
    assertEquals(-0.8 * 1.200 + 0.2 * (0.301 - 1.500), point(shared, "P").elevation(), EXACT);
  }

  @Test
  void repeatedReadingsAreAveraged() {
    Elevations elevations = one().read("P", 1.202).adjust();
    assertEquals(-1.201, point(elevations, "P").elevation(), EXACT);
    assertEquals(0.001 / Math.sqrt(2), point(elevations, "P").deviation(), EXACT);
    assertEquals(0.002, Math.abs(elevations.misclosure().get().value()), EXACT);
    assertEquals(0.005, elevations.misclosure().get().limit(), EXACT);
  }

  @Test
  void ignoredPointsAreLeftOut() {
    Elevations elevations = one().setup("B").read("P", 1.5).read("R", 1.6).ignore("R").adjust();
    assertEquals(2, elevations.points().size());
    assertFalse(elevations.points().stream().anyMatch(p -> p.point().equals("R")));
  }
}
