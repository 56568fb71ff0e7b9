package dev.fillplane.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** All loops of a network and which of them are too large. */
class LoopsTest {

  /** Loops of +1, -3 and +2 mm over two setups, and one of 0.5 mm within the first. */
  private static SurveyBuilder fourLoops() {
    return new SurveyBuilder()
        .setup("A")
        .read("1", 1.000)
        .read("2", 1.001)
        .read("3", 1.002)
        .read("4", 1.003)
        .read("5", 1.1)
        .read("5", 1.1005)
        .setup("B")
        .read("1", 1.000)
        .read("2", 1.000)
        .read("3", 1.005)
        .read("4", 1.001);
  }

  private static String text(Loop loop) {
    return loop.setups() + " " + Math.rint(loop.value() * 1e6) / 1000;
  }

  @Test
  void everyLoopWithItsLimitTheWorstFirst() {
    List<Loop> loops = fourLoops().adjust().loops();
    assertEquals(
        "[[A, B] -3.0, [A, B] 2.0, [A, B] 1.0, [A] -0.5]",
        loops.stream().map(LoopsTest::text).toList().toString());
    assertEquals(0.005 * Math.sqrt(2), loops.get(0).limit(), 1e-15);
    assertEquals(0.005, loops.get(3).limit(), 1e-15);
    assertEquals(0.004, fourLoops().misclosureLimit(0.004).adjust().loops().get(3).limit(), 0);
  }

  @Test
  void theWorstIsTheMisclosure() {
    for (long seed = 0; seed < 100; seed++) {
      Elevations adjusted =
          SurveyAdjustment.adjust(
              RandomNetwork.make(seed), SurveyBuilder.PLACE, new dev.fillplane.finding.Findings());
      assertEquals(
          adjusted.misclosure().map(Misclosure::value),
          adjusted.loops().stream().findFirst().map(Loop::value));
      double before = Double.POSITIVE_INFINITY;
      for (Loop loop : adjusted.loops()) {
        assertTrue(Math.abs(loop.value()) <= before + 1e-9);
        before = Math.abs(loop.value());
      }
    }
  }

  @Test
  void atMostTheWorstFifty() {
    SurveyBuilder survey = new SurveyBuilder().setup("A");
    for (int i = 0; i < 80; i++) {
      survey.read("p" + i, 1.0);
    }
    survey.setup("B").read("p0", 1.0);
    for (int i = 1; i < 80; i++) {
      survey.read("p" + i, 1.0 + 0.00001 * i);
    }
    List<Loop> loops = survey.adjust().loops();
    assertEquals(50, loops.size());
    assertEquals(-0.00079, loops.get(0).value(), 1e-12);
    assertEquals(-0.00030, loops.get(49).value(), 1e-12);
  }

  /** Two setups over one flat floor, read with 1 mm; one reading is wrong by {@code blunder}. */
  private static SurveyBuilder overlap(int points, double blunder) {
    Random random = new Random(11);
    SurveyBuilder survey = new SurveyBuilder();
    for (String setup : List.of("A", "B")) {
      survey.setup(setup);
      for (int i = 0; i < points; i++) {
        double off = setup.equals("B") && i == 7 ? blunder : 0;
        survey.read("p" + i, 1.3 + off + 0.001 * random.nextGaussian());
      }
    }
    return survey;
  }

  /** The largest of 20,000 loops is over 7.07 mm; nothing is wrong. */
  @Test
  void largeOverlapDoesNotWarnByChance() {
    SurveyBuilder survey = overlap(20_000, 0);
    Misclosure misclosure = survey.adjust().misclosure().get();
    assertTrue(Math.abs(misclosure.value()) > misclosure.limit());
    assertEquals(List.of(), survey.findings());
  }

  /** What chance does not explain still warns, and so does the caller's own limit. */
  @Test
  void largeOverlapWarnsOfABlunder() {
    List<String> over = List.of("misclosure-over-limit #/survey");
    assertEquals(over, overlap(20_000, -0.020).findings());
    assertEquals(over, overlap(20_000, 0).misclosureLimit(0.006).findings());
    assertEquals(over, overlap(9, -0.014).findings());
  }

  /** One after another round a ring, with the ways back to the ground of two benchmarks. */
  @Test
  void loopsOverTheGround() {
    List<Loop> loops =
        new SurveyBuilder()
            .setup("A")
            .read("low", 1.0)
            .read("1", 1.0)
            .setup("B")
            .read("1", 1.2)
            .read("2", 1.2)
            .setup("C")
            .read("2", 1.1)
            .read("high", 1.1)
            .read("low", 1.104)
            .benchmark("low", 0)
            .benchmark("high", 0.003)
            .adjust()
            .loops();
    assertEquals(
        List.of(List.of("A", "B", "C"), List.of("C")),
        loops.stream().map(Loop::setups).sorted((a, b) -> b.size() - a.size()).toList());
  }
}
