package dev.fillplane.survey;

import static dev.fillplane.survey.SurveyBuilder.point;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.quantity.Amount;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Planes that are not quite level. */
class LaserTiltTest {

  private static final double TILT = 0.0001;
  private static final double EXACT = 1e-12;

  private static SurveyBuilder one() {
    return new SurveyBuilder()
        .laserTilt(TILT)
        .setup("A")
        .read("P", 0, 0, 1.2)
        .read("Q", 20, 0, 1.3)
        .read("R", 10, 0, 1.1);
  }

  /** One setup shows nothing: no tilt is found, deviations grow with the distance. */
  @Test
  void oneSetupOnlyGrowsUnsure() {
    Elevations adjusted = one().adjust();
    AdjustedSetup setup = adjusted.setups().get(0);
    assertEquals(10, setup.x().getAsDouble(), EXACT);
    assertEquals(0, setup.y().getAsDouble(), EXACT);
    assertEquals(0, setup.tiltX().getAsDouble(), 0);
    assertEquals(TILT, setup.tiltDeviation().getAsDouble(), EXACT);
    assertEquals(-1.3, point(adjusted, "Q").elevation(), EXACT);
    assertEquals(0.001, point(adjusted, "R").deviation(), EXACT);
    assertEquals(0.001 * Math.sqrt(2), point(adjusted, "Q").deviation(), EXACT);
  }

  @Test
  void oneSetupIsAskedForATwoWayCheck() {
    assertEquals(List.of("tilt-unseen #/survey"), one().findings());
    Map<String, Object> values = one().allFindings().get(0).values();
    assertEquals(0.001, ((Amount) values.get("off")).si(), EXACT);
    assertEquals(List.of(), one().laserTilt(0.00004).findings());
    assertEquals(List.of(), one().laserTilt(0).findings());
  }

  /** A second setup over one point only shows as little; benchmarks far apart show enough. */
  @Test
  void whatShowsNothingIsWarnedOfToo() {
    SurveyBuilder two = one().setup("B").read("P", 0, 0, 1.0).read("S", 0, 20, 1.0);
    assertEquals(List.of("tilt-unseen #/survey"), two.findings());
    SurveyBuilder pegged = one().benchmark("P", 0).benchmark("Q", -0.1);
    assertEquals(List.of(), pegged.findings());
  }

  /** About the laser where its place is told; from a benchmark the laser's place does not count. */
  @Test
  void deviationsCountFromTheLaserOrTheBenchmark() {
    Elevations told = one().laserAt(0, 0).adjust();
    assertEquals(0.001, point(told, "P").deviation(), EXACT);
    assertEquals(Math.sqrt(1e-6 + 4e-6), point(told, "Q").deviation(), EXACT);
    for (SurveyBuilder survey : List.of(one(), one().laserAt(70, -40))) {
      Elevations held = survey.benchmark("P", 5).adjust();
      assertEquals(4.9, point(held, "Q").elevation(), EXACT);
      assertEquals(Math.sqrt(2e-6 + 4e-6), point(held, "Q").deviation(), EXACT);
    }
  }

  /**
   * Two pegs 40 m apart, read from midway and from beside the first; the two say 6 mm different
   * differences. With a = (tilt 40 m)2 and 4 e2 for the readings the tilts take the share 2 a / (2
   * a + 4 e2) of it, half each.
   */
  private static SurveyBuilder twoPegs() {
    return new SurveyBuilder()
        .laserTilt(TILT)
        .setup("midway")
        .laserAt(20, 0)
        .read("P", 0, 0, 1.500)
        .read("Q", 40, 0, 1.400)
        .setup("beside")
        .laserAt(0, 0)
        .read("P", 0, 0, 1.450)
        .read("Q", 40, 0, 1.344)
        .benchmark("P", 0);
  }

  @Test
  void twoPegCheckShowsTheTilt() {
    Elevations adjusted = twoPegs().adjust();
    double length = Math.pow(TILT * 40, 2);
    double share = 2 * length / (2 * length + 4e-6);
    assertEquals(0.5 * share * 0.006 / 40, adjusted.setups().get(0).tiltX().getAsDouble(), EXACT);
    assertEquals(-0.5 * share * 0.006 / 40, adjusted.setups().get(1).tiltX().getAsDouble(), EXACT);
    assertEquals(0, adjusted.setups().get(0).tiltY().getAsDouble(), EXACT);
    assertEquals(0.103, point(adjusted, "Q").elevation(), EXACT);
    assertEquals(Math.sqrt((2e-6 + length) / 2), point(adjusted, "Q").deviation(), EXACT);
    // Across the line nothing is seen.
    assertEquals(TILT, adjusted.setups().get(0).tiltDeviation().getAsDouble(), EXACT);
    assertTrue(twoPegs().findings().isEmpty(), twoPegs().findings().toString());
  }

  /** Both from midway, turned about: the same tilt of the instrument shows with both signs. */
  @Test
  void levelPlanesLeaveTheDifferenceToTheReadings() {
    Elevations level = twoPegs().laserTilt(0).adjust();
    assertTrue(level.setups().get(0).tiltX().isEmpty());
    assertEquals(0.103, point(level, "Q").elevation(), EXACT);
    assertEquals(0.001, point(level, "Q").deviation(), EXACT);
  }

  /** Benchmarks all round show a tilt of 0.3 mm/m to its true value within three deviations. */
  @Test
  void benchmarksShowATilt() {
    Random random = new Random(3);
    SurveyBuilder survey = new SurveyBuilder().laserTilt(0.0003).setup("A");
    for (int i = 0; i < 36; i++) {
      double x = 5.0 * (i % 6);
      double y = 5.0 * Math.floorDiv(i, 6);
      double plane = 1.4 + 0.0003 * (x - 12.5) - 0.0002 * (y - 12.5);
      survey.read("p" + i, x, y, plane + 0.001 * random.nextGaussian()).benchmark("p" + i, 0);
    }
    AdjustedSetup setup = survey.adjust().setups().get(0);
    double deviation = setup.tiltDeviation().getAsDouble();
    assertTrue(deviation < 0.00003, "deviation " + deviation);
    assertEquals(0.0003, setup.tiltX().getAsDouble(), 3 * deviation);
    assertEquals(-0.0002, setup.tiltY().getAsDouble(), 3 * deviation);
    assertEquals(1.4, setup.planeElevation(), 0.0006);
  }

  /** Without places nothing is tilted, whatever is told. */
  @Test
  void readingsWithoutPlacesStayLevel() {
    SurveyBuilder survey =
        new SurveyBuilder().laserTilt(TILT).setup("A").read("P", 1.2).read("Q", 1.3);
    AdjustedSetup setup = survey.adjust().setups().get(0);
    assertTrue(setup.tiltX().isEmpty() && setup.x().isEmpty());
    assertTrue(survey.findings().isEmpty());
  }

  /** No laser reads over a kilometre: the places are a slip, and the plane stays level. */
  @Test
  void readingsOutOfReachStayLevel() {
    SurveyBuilder survey = one().read("far", 5_000, 0, 1.0);
    assertTrue(survey.adjust().setups().get(0).tiltX().isEmpty());
    assertEquals(0.001, point(survey.adjust(), "Q").deviation(), EXACT);
  }

  @Test
  void wrongPlacesOfLasers() {
    assertEquals(List.of("laser-too-far #/survey/setups/0/x"), one().laserAt(521, 0).findings());
    assertEquals(List.of("tilt-unseen #/survey"), one().laserAt(499, 0).findings());
    assertEquals(List.of("out-of-range #/survey/laserTilt"), one().laserTilt(0.0051).findings());
  }

  @Test
  void manySetupsAreTakenAsLevel() {
    SurveyBuilder survey = new SurveyBuilder().laserTilt(TILT);
    for (int s = 0; s <= Lasers.MOST_SETUPS; s++) {
      survey.setup("S" + s).read("1", 0, 0, 1.0).read("2", 10, 0, 1.0);
    }
    assertEquals(List.of("tilt-left-out #/survey"), survey.findings());
    assertTrue(survey.adjust().setups().get(0).tiltX().isEmpty());
    assertEquals(List.of(), survey.laserTilt(0).findings());
  }
}
