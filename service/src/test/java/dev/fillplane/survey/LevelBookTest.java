package dev.fillplane.survey;

import static dev.fillplane.survey.SurveyBuilder.plane;
import static dev.fillplane.survey.SurveyBuilder.point;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Level books whose results are printed elsewhere or follow by hand. */
class LevelBookTest {

  private static final double EXACT = 1e-9;
  private static final double FOOT = 0.3048;

  /** Three setups of a college example, inputs confirmed; results by hand from HI = elev + BS. */
  @Test
  void threeSetupsWithoutRedundancy() {
    Elevations book =
        new SurveyBuilder()
            .setup("1")
            .read("TBM", 1.400)
            .read("A", 1.235)
            .read("B", 1.870)
            .setup("2")
            .read("B", 1.355)
            .read("C", 3.340)
            .read("D", 1.975)
            .setup("3")
            .read("D", 0.585)
            .read("E", 0.855)
            .benchmark("TBM", 50.000)
            .adjust();
    assertEquals(51.400, plane(book, "1"), EXACT);
    assertEquals(50.885, plane(book, "2"), EXACT);
    assertEquals(49.495, plane(book, "3"), EXACT);
    assertEquals(50.165, point(book, "A").elevation(), EXACT);
    assertEquals(49.530, point(book, "B").elevation(), EXACT);
    assertEquals(47.545, point(book, "C").elevation(), EXACT);
    assertEquals(48.910, point(book, "D").elevation(), EXACT);
    assertEquals(48.640, point(book, "E").elevation(), EXACT);
    assertTrue(book.misclosure().isEmpty());
  }

  /**
   * A loop of five setups that comes back 10 mm high; Ghilani and Wolf, Elementary Surveying 14e,
   * problem 5.12: inputs confirmed, results derived by hand.
   */
  private static SurveyBuilder loop() {
    return new SurveyBuilder()
        .setup("1")
        .read("BM7", 4.388)
        .read("TP1", 4.538)
        .setup("2")
        .read("TP1", 6.907)
        .read("BM8", 8.800)
        .setup("3")
        .read("BM8", 4.680)
        .read("TP2", 5.978)
        .setup("4")
        .read("TP2", 3.730)
        .read("TP3", 5.245)
        .setup("5")
        .read("TP3", 8.464)
        .read("BM7", 3.598)
        .benchmark("BM7", 852.045);
  }

  @Test
  void loopClosesTenMillimetresHigh() {
    Misclosure misclosure = loop().loopLength(1500).adjust().misclosure().get();
    assertEquals(0.010, misclosure.value(), EXACT);
    assertEquals(0.0147, misclosure.limit(), 0.00005);
    assertTrue(loop().loopLength(1500).findings().isEmpty());
  }

  /** 8 mm sqrt(1.5 km) = 9.8 mm is too narrow for it. */
  @Test
  void loopIsOutsideANarrowerLimitOfTheCaller() {
    assertEquals(
        "[misclosure-over-limit #/survey]", loop().misclosureLimit(0.0098).findings().toString());
  }

  /**
   * The book carries 856.433, 851.895, 858.802 ... forward. Equal setups share the 10 mm equally: 2
   * mm each, half of it to the setup's plane.
   */
  @Test
  void loopIsSharedEquallyAmongItsSetups() {
    Elevations adjusted = loop().adjust();
    assertEquals(856.433 - 0.001, plane(adjusted, "1"), EXACT);
    assertEquals(858.802 - 0.003, plane(adjusted, "2"), EXACT);
    assertEquals(854.682 - 0.005, plane(adjusted, "3"), EXACT);
    assertEquals(852.434 - 0.007, plane(adjusted, "4"), EXACT);
    assertEquals(855.653 - 0.009, plane(adjusted, "5"), EXACT);
    assertEquals(851.895 - 0.002, point(adjusted, "TP1").elevation(), EXACT);
    assertEquals(850.002 - 0.004, point(adjusted, "BM8").elevation(), EXACT);
    assertEquals(848.704 - 0.006, point(adjusted, "TP2").elevation(), EXACT);
    assertEquals(847.189 - 0.008, point(adjusted, "TP3").elevation(), EXACT);
  }

  /**
   * A loop of 30.5 km adjusted by distance (inputs confirmed, results +0.008 m per km derived). Its
   * sections stand for one setup each whose error grows with the square root of the section's
   * length, as the deviation of a levelled line does: least squares with these errors is the
   * adjustment by distance.
   */
  @Test
  void longLoopIsSharedByDistance() {
    double[] km = {0, 5.245, 11.271, 17.718, 21.964, 25.247, 30.500};
    double[] carried = {728.730, 783.213, 891.764, 843.195, 739.708, 702.956, 728.486};
    double[] adjusted = {728.730, 783.25496, 891.854168, 843.336744, 739.883712, 703.157976};
    SurveyBuilder book = new SurveyBuilder().benchmark("0", carried[0]);
    for (int i = 1; i < km.length; i++) {
      book.setup("section " + i, 0.002 * Math.sqrt(km[i] - km[i - 1]))
          .read(String.valueOf(i - 1), 200)
          .read(String.valueOf(i % 6), 200 - (carried[i] - carried[i - 1]));
    }
    Elevations loop = book.adjust();
    for (int i = 0; i < adjusted.length; i++) {
      assertEquals(adjusted[i], point(loop, String.valueOf(i)).elevation(), EXACT);
    }
    assertEquals(-0.244, loop.misclosure().get().value(), EXACT);
  }

  /** BM 820.00 ft, backsight 8.42, foresight 1.20; a published example: 828.42 and 827.22. */
  @Test
  void singleSetupInFeet() {
    Elevations book =
        new SurveyBuilder()
            .setup("A")
            .read("BM", 8.42 * FOOT)
            .read("X", 1.20 * FOOT)
            .benchmark("BM", 820.00 * FOOT)
            .adjust();
    assertEquals(828.42 * FOOT, plane(book, "A"), EXACT);
    assertEquals(827.22 * FOOT, point(book, "X").elevation(), EXACT);
  }
}
