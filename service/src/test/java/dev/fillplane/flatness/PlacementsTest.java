package dev.fillplane.flatness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class PlacementsTest {

  private static final double LIMIT = 0.005;

  @Test
  void allPlacesMustKeepTheLimit() {
    assertEquals(Passes.WITHIN, places(0, 1, 2, 5).verdict(1));
    assertEquals(Passes.OVER, places(0, 1, 2, 5.1).verdict(1));
    assertEquals(0.75, places(0, 1, 2, 5.1).met());
    assertEquals(0.0051, places(0, 1, 2, 5.1).largest(), 1e-12);
  }

  /** One place in ten may be over where nine in ten must keep the limit, two may not. */
  @Test
  void mostPlacesMustKeepTheLimit() {
    assertEquals(Passes.WITHIN, places(1, 1, 1, 1, 1, 1, 1, 1, 1, 9).verdict(0.9));
    assertEquals(Passes.OVER, places(1, 1, 1, 1, 1, 1, 1, 1, 9, 9).verdict(0.9));
    assertEquals(Passes.OVER, places(1, 1, 1, 1, 1, 1, 1, 1, 1, 9).verdict(1));
  }

  @Test
  void marginLeavesItUnclear() {
    Placements near = new Placements();
    near.add(0.0045, LIMIT, 0.001);
    assertEquals(Passes.UNCLEAR, near.verdict(1));
    Placements hardlyOver = new Placements();
    hardlyOver.add(0.0055, LIMIT, 0.001);
    assertEquals(Passes.UNCLEAR, hardlyOver.verdict(1));
    hardlyOver.add(0.0061, LIMIT, 0.001);
    assertEquals(Passes.OVER, hardlyOver.verdict(1));
  }

  @Test
  void noPlacesBreakNothing() {
    assertEquals(Passes.WITHIN, new Placements().verdict(1));
    assertEquals(1, new Placements().met());
  }

  @Test
  void worstOfAllBestOfOne() {
    List<Passes> verdicts = List.of(Passes.OVER, Passes.WITHIN, Passes.UNCLEAR);
    assertEquals(Passes.OVER, Passes.together(verdicts, Enough.ALL));
    assertEquals(Passes.WITHIN, Passes.together(verdicts, Enough.ONE));
  }

  private static Placements places(double... millimetres) {
    Placements places = new Placements();
    for (double gap : millimetres) {
      places.add(gap / 1000, LIMIT, 0);
    }
    return places;
  }
}
