package dev.fillplane.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class MisclosureTest {

  private static void check(double value, int setups, SurveyBuilder survey) {
    Misclosure misclosure = survey.adjust().misclosure().get();
    assertEquals(value, misclosure.value(), 1e-12);
    assertEquals(0.005 * Math.sqrt(setups), misclosure.limit(), 1e-12);
  }

  /** From the lower benchmark to the higher it comes out too low. */
  @Test
  void twoBenchmarksInOneSetupCloseOverTheGround() {
    check(
        -0.003,
        1,
        new SurveyBuilder()
            .setup("A")
            .read("1", 1.000)
            .read("2", 1.000)
            .benchmark("1", 0.003)
            .benchmark("2", 0));
  }

  @Test
  void loopOfTwoSetupsCountsBoth() {
    check(
        -0.002,
        2,
        new SurveyBuilder()
            .setup("A")
            .read("1", 1.000)
            .read("2", 1.000)
            .setup("B")
            .read("1", 1.001)
            .read("2", 1.003));
  }

  /** A ring of four setups without benchmark: each hands on to the next, 1 mm is left. */
  @Test
  void ringOfFourSetups() {
    check(
        0.001,
        4,
        new SurveyBuilder()
            .setup("A")
            .read("4", 1.000)
            .read("1", 1.000)
            .setup("B")
            .read("1", 1.000)
            .read("2", 1.000)
            .setup("C")
            .read("2", 1.000)
            .read("3", 1.000)
            .setup("D")
            .read("3", 1.000)
            .read("4", 0.999));
  }

  /** Between two benchmarks; the branch beside the loop does not count. */
  @Test
  void lineBetweenBenchmarksCountsItsOwnSetupsOnly() {
    check(
        0.004,
        3,
        new SurveyBuilder()
            .setup("A")
            .read("start", 1.000)
            .read("1", 1.000)
            .setup("B")
            .read("1", 1.000)
            .read("2", 1.000)
            .setup("C")
            .read("2", 1.000)
            .read("end", 1.000)
            .setup("beside")
            .read("1", 1.500)
            .benchmark("start", 0.004)
            .benchmark("end", 0));
  }

  /** Loops of +1, -3 and +2 mm: the largest counts, whatever its sign. */
  @Test
  void largestInAbsoluteValueCounts() {
    check(
        -0.003,
        2,
        new SurveyBuilder()
            .setup("A")
            .read("1", 1.000)
            .read("2", 1.001)
            .read("3", 1.002)
            .read("4", 1.003)
            .setup("B")
            .read("1", 1.000)
            .read("2", 1.000)
            .read("3", 1.005)
            .read("4", 1.001));
  }

  @Test
  void overTheLimitIsWarnedOf() {
    SurveyBuilder survey =
        new SurveyBuilder()
            .setup("A")
            .read("1", 1.000)
            .read("2", 1.000)
            .setup("B")
            .read("1", 1.000)
            .read("2", 1.0072);
    assertEquals("[misclosure-over-limit #/survey]", survey.findings().toString());
    assertEquals("[]", survey.misclosureLimit(0.008).findings().toString());
    assertEquals(0.008, survey.loopLength(50).adjust().misclosure().get().limit(), 1e-12);
  }
}
