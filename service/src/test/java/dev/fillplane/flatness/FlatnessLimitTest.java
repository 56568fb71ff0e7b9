package dev.fillplane.flatness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class FlatnessLimitTest {

  /** DIN 18202 table 3; the two examples of interpolation are published with the rule. */
  @Test
  void publishedInterpolation() {
    assertDin(6, 3, 2);
    assertDin(8, 3, 3);
  }

  @Test
  void anchorsAndBetween() {
    assertDin(2, 3, 0.1);
    assertDin(12, 3, 10);
    assertDin(15, 3, 15);
    assertDin(5, 4, 2);
    assertDin(10, 1, 0.1);
    assertDin(25, 6, 15);
  }

  /** 15 + 1.5 x 5/3 = 17.5 and 2 + 0.45 / 0.9 = 2.5: a half goes up. */
  @Test
  void roundsHalfUp() {
    assertDin(18, 1, 2.5);
    assertDin(3, 7, 0.55);
  }

  /** From memory: the last value holds beyond the table. */
  @Test
  void beyondTheTable() {
    assertDin(15, 4, 40);
  }

  @Test
  void refusesWhatTheTableDoesNotHave() {
    assertThrows(IllegalArgumentException.class, () -> Din18202.limit(0, 2));
    assertThrows(IllegalArgumentException.class, () -> Din18202.limit(8, 2));
    assertThrows(IllegalArgumentException.class, () -> Din18202.limit(3, 0.05));
    assertThrows(IllegalArgumentException.class, () -> Din18202.limit(3, Double.NaN));
  }

  /** Sources as each limit names them; carpet is common practice, no source. */
  @Test
  void limitsOfCoverings() {
    assertLimit(6.35, Covering.TILE, "ANSI A108.02");
    assertLimit(3.175, Covering.TILE_LARGE, "ANSI A108.02");
    assertLimit(4.7625, Covering.RESILIENT, "ASTM F710");
    assertLimit(4.7625, Covering.WOOD_GLUED, "guideline");
    assertLimit(4.7625, Covering.WOOD_FLOATING, "guideline");
    assertLimit(6.35, Covering.CARPET, "common practice, no source");
  }

  @Test
  void noCoveringTold() {
    FlatnessLimit usual = FlatnessLimit.usual();
    assertEquals(2, usual.straightedge());
    assertEquals(0.005, usual.gap(), 1e-15);
    assertFalse(usual.source().isEmpty());
  }

  private static void assertLimit(double mm, Covering covering, String source) {
    assertEquals(3.048, covering.limit().straightedge());
    assertEquals(mm, covering.limit().gap() * 1000, 1e-12);
    assertEquals(0, covering.limit().source().indexOf(source), covering.limit().source());
  }

  private static void assertDin(int mm, int line, double span) {
    assertEquals(mm / 1000.0, Din18202.limit(line, span), 1e-15);
  }
}
