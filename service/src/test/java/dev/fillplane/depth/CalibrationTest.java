package dev.fillplane.depth;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Whether the odds of a volume are honest: over many invented floors the true volume lies under the
 * p90 about nine times in ten and under the p10 about one time in ten. The survey is the only error
 * here; placing and yield are not in these odds.
 *
 * <p>With 720 floors a share of 0.9 is known to 0.011 (one standard error), with 360 to 0.016. Few
 * readings tell less about the kind of floor, so the bands there are wider; they are what is kept,
 * not what is wished.
 */
class CalibrationTest {

  @Test
  void oddsOfUsualSurveys() {
    assertShares(720, 5_000, 9, 40, 0.05, 0.15, 0.85, 0.95);
  }

  @Test
  void oddsOfFewReadings() {
    assertShares(360, 1_000, 9, 12, 0.05, 0.18, 0.82, 0.95);
  }

  @Test
  void oddsBelowEightReadings() {
    assertShares(360, 1_000, 4, 7, 0.05, 0.22, 0.82, 0.95);
  }

  private static void assertShares(
      int count,
      int first,
      int fewest,
      int most,
      double low1,
      double high1,
      double low9,
      double high9) {
    SurveyedFloor[] floors =
        IntStream.range(first, first + count)
            .mapToObj(number -> SurveyedFloor.of(number, fewest, most))
            .toArray(SurveyedFloor[]::new);
    assertBetween("p10", low1, high1, share(floors, VolumeOdds::p10));
    assertBetween("p90", low9, high9, share(floors, VolumeOdds::p90));
  }

  private static double share(SurveyedFloor[] floors, ToDoubleFunction<VolumeOdds> quantile) {
    double under = 0;
    for (SurveyedFloor floor : floors) {
      under += floor.trueVolume() <= quantile.applyAsDouble(floor.odds()) ? 1 : 0;
    }
    return under / floors.length;
  }

  private static void assertBetween(String name, double least, double most, double share) {
    assertTrue(
        share >= least && share <= most,
        () -> "true volume under " + name + " in a share of " + share);
  }
}
