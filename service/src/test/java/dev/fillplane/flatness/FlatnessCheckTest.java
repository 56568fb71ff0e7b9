package dev.fillplane.flatness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class FlatnessCheckTest {

  private static final FlatnessLimit FIVE = new FlatnessLimit(2, 0.005, "test");

  /** Margin 1.645 sqrt(1.5) s: 2.0147 mm for a deviation of 1 mm. */
  @Test
  void verdictByTheMargin() {
    assertVerdict(Passes.WITHIN, 2.98, 1);
    assertVerdict(Passes.UNCLEAR, 2.99, 1);
    assertVerdict(Passes.UNCLEAR, 7.01, 1);
    assertVerdict(Passes.OVER, 7.02, 1);
    assertVerdict(Passes.WITHIN, 4.99, 0);
    assertVerdict(Passes.OVER, 5.01, 0);
    assertVerdict(Passes.UNCLEAR, 5, 0);
  }

  /** Residual SD 1.0 mm with pins, 1.5 mm without: common practice, no source. */
  @Test
  void afterThePourNoFloorIsPerfect() {
    assertAfter(2.0147, Passes.WITHIN, Covering.TILE_LARGE.limit(), true);
    assertAfter(3.0220, Passes.WITHIN, Covering.TILE_LARGE.limit(), false);
    assertAfter(3.0220, Passes.UNCLEAR, new FlatnessLimit(2, 0.003, "test"), false);
  }

  @Test
  void wholeCheckOfABowl() {
    FlatnessSummary summary =
        FlatnessCheck.of(List.of(hall()), (x, y) -> 0.004 * x * x, 0.0003, FIVE, true);
    assertEquals(0.004, summary.before().gap(), 1e-12);
    assertEquals(Passes.WITHIN, summary.before().verdict());
    assertEquals(FIVE, summary.limit());
  }

  /** Gutters 10 mm deep, 1.5 m apart: each is listed, the worst first. */
  @Test
  void gapsOverTheLimitAreListed() {
    FlatnessSummary summary =
        FlatnessCheck.of(
            List.of(hall()),
            (x, y) -> Math.abs(x - 1.5) < 0.2 ? -0.010 : Math.abs(x - 4.5) < 0.2 ? -0.012 : 0,
            0,
            FIVE,
            true);
    List<ListedGap> gaps = summary.gaps();
    assertEquals(4.5, gaps.get(0).at().x().orElseThrow(), 0.2);
    assertEquals(0.012, gaps.get(0).gap(), 1e-9);
    assertEquals(2, gaps.get(0).straightedge());
    assertTrue(gaps.stream().anyMatch(gap -> Math.abs(gap.at().x().orElseThrow() - 1.5) < 0.2));
    assertTrue(gaps.size() <= 20);
    assertEquals(List.of(), FlatnessCheck.of(List.of(hall()), (x, y) -> 0, 0, FIVE, true).gaps());
  }

  @Test
  void planeFloorHasGapZero() {
    FlatnessSummary summary = FlatnessCheck.of(List.of(hall()), (x, y) -> 0.1 * x, 0, FIVE, true);
    assertEquals(new FloorGap(0, Passes.WITHIN), summary.before());
  }

  @Test
  void refusesADeviationThatIsNone() {
    assertThrows(IllegalArgumentException.class, () -> FlatnessCheck.before(0, -1, FIVE));
    assertThrows(IllegalArgumentException.class, () -> FlatnessCheck.before(0, Double.NaN, FIVE));
  }

  private static void assertVerdict(Passes verdict, double gapMm, double deviationMm) {
    assertEquals(
        verdict,
        FlatnessCheck.before(gapMm / 1000, deviationMm / 1000, FIVE).verdict(),
        gapMm + "");
  }

  private static void assertAfter(double mm, Passes verdict, FlatnessLimit limit, boolean guided) {
    FloorGap after = FlatnessCheck.after(limit, guided);
    assertEquals(mm, after.gap() * 1000, 0.0001);
    assertEquals(verdict, after.verdict());
  }

  private static Polygon hall() {
    Position corner = new Position(0, 0);
    return new Outline(
            List.of(
                List.of(
                    corner, new Position(6, 0), new Position(6, 4), new Position(0, 4), corner)))
        .polygon();
  }
}
