package dev.fillplane.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.quantity.Amount;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How setups agree on the points that they share. */
class TiesTest {

  /** Three setups in a ring of one shared point each; 9 mm are left over, 3 mm to each tie. */
  private static SurveyBuilder ring(double left) {
    return new SurveyBuilder()
        .setup("A")
        .read("1", 1.0)
        .read("2", 1.0)
        .setup("B")
        .read("2", 1.0)
        .read("3", 1.0)
        .setup("C")
        .read("3", 1.0)
        .read("1", 1.0 + left);
  }

  @Test
  void ringSharesWhatIsLeftOver() {
    List<Tie> ties = ring(0.009).adjust().ties();
    assertEquals(3, ties.size());
    assertEquals("A", ties.get(0).from());
    assertEquals("B", ties.get(0).to());
    for (Tie tie : ties) {
      assertEquals(1, tie.points());
      assertEquals(
          tie.to().equals("C") && tie.from().equals("A") ? -0.003 : 0.003, tie.difference(), 1e-12);
    }
  }

  /** Three deviations of one difference are 4.2 mm with 1 mm a reading, and 1.3 mm with 0.3 mm. */
  @Test
  void openTiesAreWarnedOf() {
    SurveyBuilder wide = ring(0.0126).misclosureLimit(0.05);
    assertEquals(List.of(), wide.findings());
    assertEquals(
        List.of(
            "tie-open #/survey/setups/1",
            "tie-open #/survey/setups/2",
            "tie-open #/survey/setups/2"),
        ring(0.0129).misclosureLimit(0.05).findings());
    assertEquals(List.of(), ring(0.0044).misclosureLimit(0.05).readingError(0.0003).findings());
    SurveyBuilder sharp = ring(0.0046).misclosureLimit(0.05).readingError(0.0003);
    assertEquals(3, sharp.findings().size());
    Amount limit = (Amount) sharp.allFindings().get(0).values().get("limit");
    assertEquals(0.0015, limit.si(), 0);
  }

  /** Two setups that hang together by their shared points alone agree on average. */
  @Test
  void meanOverTheSharedPoints() {
    Tie tie =
        new SurveyBuilder()
            .setup("A")
            .read("1", 1.0)
            .read("2", 1.0)
            .read("3", 1.0)
            .setup("B")
            .read("1", 1.001)
            .read("2", 1.003)
            .adjust()
            .ties()
            .get(0);
    assertEquals(2, tie.points());
    assertEquals(0, tie.difference(), 1e-12);
  }

  /** Both are held by benchmarks of their own; what they make of two points differs by 2 mm. */
  @Test
  void heldSetupsDoNotAgree() {
    SurveyBuilder survey =
        new SurveyBuilder()
            .setup("A")
            .read("low", 1.0)
            .read("1", 1.0)
            .setup("B")
            .read("high", 1.0)
            .read("1", 1.004)
            .benchmark("low", 0)
            .benchmark("high", 0);
    // A and B each stand on one benchmark: 4 mm over four equal readings, half of it in the tie.
    assertEquals(-0.002, survey.adjust().ties().get(0).difference(), 1e-12);
    assertTrue(survey.findings().isEmpty());
  }

  @Test
  void atMostTwoHundred() {
    SurveyBuilder survey = new SurveyBuilder();
    for (int s = 0; s < 25; s++) {
      survey.setup("S" + s).read("1", 1.0).read("2", 1.0 + 0.0001 * s);
    }
    assertEquals(200, survey.adjust().ties().size());
  }
}
