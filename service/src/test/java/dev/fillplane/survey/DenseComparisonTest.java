package dev.fillplane.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Findings;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The adjustment against the slow plain way on random networks. */
class DenseComparisonTest {

  private static final int NETWORKS = 200;

  private interface Comparison {
    void compare(Survey survey, Elevations fast, DenseLeastSquares slow);
  }

  private static void onNetworks(Comparison comparison) {
    for (long seed = 0; seed < NETWORKS; seed++) {
      Survey made = RandomNetwork.make(seed);
      double tilt = seed % 2 * 0.0003;
      Survey survey = RandomNetwork.with(made.setups(), made.benchmarks(), tilt);
      Elevations fast = SurveyAdjustment.adjust(survey, SurveyBuilder.PLACE, new Findings());
      comparison.compare(survey, fast, new DenseLeastSquares(survey));
    }
  }

  @Test
  void sameHeights() {
    onNetworks(
        (survey, fast, slow) -> {
          for (AdjustedSetup setup : fast.setups()) {
            assertEquals(slow.plane(setup.id()), setup.planeElevation(), 1e-12);
            assertEquals(slow.tilt("x", setup.id()), setup.tiltX().orElse(0), 1e-12);
            assertEquals(slow.tilt("y", setup.id()), setup.tiltY().orElse(0), 1e-12);
          }
          for (AdjustedPoint point : fast.points()) {
            assertEquals(slow.elevation(point.point()), point.elevation(), 1e-12);
          }
        });
  }

  @Test
  void sameDeviationsAndResiduals() {
    onNetworks(
        (survey, fast, slow) -> {
          for (AdjustedPoint point : fast.points()) {
            assertEquals(slow.deviation(point.point()), point.deviation(), 1e-12);
            assertEquals(slow.residual(point.point()), Math.abs(point.residual()), 1e-9);
          }
        });
  }

  /** Suspects are those that the full cofactor matrix finds, with what is found without them. */
  @Test
  void sameSuspects() {
    List<Suspect> met = new ArrayList<>();
    onNetworks(
        (survey, fast, slow) -> {
          met.addAll(fast.suspects());
          for (AdjustedPoint point : fast.points()) {
            boolean suspect =
                fast.suspects().stream().anyMatch(s -> s.point().equals(point.point()));
            assertEquals(slow.standardized(point.point()) > 3, suspect);
          }
          for (Suspect one : fast.suspects()) {
            assertEquals(slow.standardized(one.point()), one.standardized(), 1e-6);
            assertTrue(
                slow.elevationsWithoutWorst(one.point()).stream()
                    .anyMatch(found -> Math.abs(found - one.expected()) < 1e-9));
          }
        });
    assertTrue(met.size() > 50, "suspects met: " + met.size());
  }
}
