package dev.fillplane.flatness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TolerancesTest {

  /** DIN 18202 table 3 at its distances 0.1, 1, 4, 10 and 15 m, mm (published). */
  @Test
  void publishedAnchorsOfDin18202() {
    assertLine(1, 10, 15, 20, 25, 30);
    assertLine(2, 5, 8, 12, 15, 20);
    assertLine(3, 2, 4, 10, 12, 15);
    assertLine(4, 1, 3, 9, 12, 15);
    assertLine(5, 5, 10, 15, 25, 30);
    assertLine(6, 3, 5, 10, 20, 25);
    assertLine(7, 2, 3, 8, 15, 20);
  }

  /**
   * BS 8204 under 2 m (published, Concrete Society); NATSPEC and NZS 3114 (published, US Access
   * Board, surface tolerances, 2011).
   */
  @Test
  void gradesUnderOneEdge() {
    assertLimit("bs-8204-sr1", 2, 0.003);
    assertLimit("bs-8204-sr2", 2, 0.005);
    assertLimit("bs-8204-sr3", 2, 0.010);
    assertLimit("natspec-a", 3, 0.003);
    assertLimit("natspec-b", 3, 0.006);
    assertLimit("natspec-c", 0.6, 0.006);
    assertLimit("nzs-3114", 3, 0.005);
  }

  /** ACI 117-10 table 4.8.5.1 and 3/5 locally (published); the gaps of 4.8.6.1 from memory. */
  @Test
  void americanClasses() {
    assertClass("conventional", 20, 15, 12, 9);
    assertClass("moderately-flat", 25, 20, 15, 12);
    assertClass("flat", 35, 25, 21, 15);
    assertClass("very-flat", 45, 35, 27, 21);
    assertClass("superflat", 60, 40, 36, 24);
    assertLimit("aci-117-conventional", 3.048, 0.01905);
    assertLimit("aci-117-moderately-flat", 3.048, 0.015875);
    assertLimit("aci-117-flat", 3.048, 0.009525);
    assertFalse(find("aci-117-superflat").hasGap());
  }

  /** ASTM F710, ANSI A108.02, guideline of the wood flooring trade association (published). */
  @Test
  void coverings() {
    assertLimit("astm-f710", 3.048, 0.0047625);
    assertLimit("tile-small", 3.048, 0.00635);
    assertLimit("tile-large", 3.048, 0.003175);
    assertLimit("wood-glued", 3.048, 0.0047625);
  }

  /** ANSI A108.02 and the guideline of the wood flooring trade association (published). */
  @Test
  void secondFigures() {
    assertFigures("tile-small", Enough.ALL, 3.048, 0.00635, 0.3048, 0.0015875);
    assertFigures("tile-large", Enough.ALL, 3.048, 0.003175, 0.6096, 0.0015875);
    assertFigures("wood-glued", Enough.ONE, 3.048, 0.0047625, 1.8288, 0.003175);
    assertFigures("wood-short-fasteners", Enough.ONE, 3.048, 0.0047625, 1.8288, 0.003175);
    assertFigures("wood-long-fasteners", Enough.ONE, 3.048, 0.00635, 1.8288, 0.0047625);
  }

  /** ACI 117-10 table 4.8.6.1, 100 % and 90 % of the placements, from memory. */
  @Test
  void americanShares() {
    assertShares("conventional", 0.01905, 0.0127);
    assertShares("moderately-flat", 0.015875, 0.009525);
    assertShares("flat", 0.009525, 0.00635);
    assertTrue(find("aci-117-very-flat").figuresAt(2).isEmpty());
  }

  @Test
  void everyCoveringHasATolerance() {
    for (Covering covering : Covering.values()) {
      assertEquals(covering.limit(), covering.tolerance().limit().orElseThrow());
      assertEquals(covering.title(), covering.tolerance().name());
    }
  }

  @Test
  void eachHasItsOwnIdAndASource() {
    List<String> ids = Tolerances.all().stream().map(Tolerance::id).toList();
    assertEquals(ids.stream().distinct().toList(), ids);
    assertTrue(Tolerances.all().stream().noneMatch(tolerance -> tolerance.source().isEmpty()));
    assertTrue(Tolerances.find("din-18202-line-8").isEmpty());
  }

  private static void assertLine(int line, int... millimetres) {
    double[] spans = {0.1, 1, 4, 10, 15};
    for (int i = 0; i < spans.length; i++) {
      Tolerance din = find("din-18202-line-" + line);
      FlatnessLimit limit = din.at(spans[i]).orElseThrow();
      assertEquals(millimetres[i] / 1000.0, limit.gap(), 1e-12);
      assertEquals(spans[i], limit.straightedge());
      assertEquals(limit.gap(), din.allowed(spans[i], 1), 1e-12);
    }
  }

  private static void assertLimit(String id, double edge, double gap) {
    FlatnessLimit limit = find(id).at(7).orElseThrow();
    assertEquals(edge, limit.straightedge(), 1e-12);
    assertEquals(gap, limit.gap(), 1e-12);
  }

  private static void assertFigures(
      String id, Enough enough, double edge, double gap, double shortEdge, double shortGap) {
    Tolerance tolerance = find(id);
    assertEquals(enough, tolerance.enough());
    assertEquals(2, tolerance.figures().size());
    assertFigure(edge, gap, 1, tolerance.figures().get(0));
    assertFigure(shortEdge, shortGap, 1, tolerance.figures().get(1));
  }

  private static void assertShares(String floor, double everywhere, double mostly) {
    Tolerance tolerance = find("aci-117-" + floor);
    assertEquals(2, tolerance.figures().size());
    assertFigure(3.048, everywhere, 1, tolerance.figures().get(0));
    assertFigure(3.048, mostly, 0.9, tolerance.figures().get(1));
  }

  private static void assertFigure(double edge, double gap, double share, GapLimit figure) {
    assertEquals(edge, figure.straightedge(), 1e-12);
    assertEquals(gap, figure.gap(), 1e-12);
    assertEquals(share, figure.share());
  }

  private static void assertClass(String floor, double ff, double fl, double ffPart, double part) {
    FNumberClass told = find("aci-117-" + floor).fNumbers().orElseThrow();
    assertEquals(ff, told.ff());
    assertEquals(fl, told.fl());
    assertEquals(ffPart, told.localFf(), 1e-12);
    assertEquals(part, told.localFl(), 1e-12);
  }

  private static Tolerance find(String id) {
    return Tolerances.find(id).orElseThrow();
  }
}
