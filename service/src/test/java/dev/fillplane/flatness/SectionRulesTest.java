package dev.fillplane.flatness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Position;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** Rules for lines of ASTM E1155M sections 7.2, 7.3, 8.2.3 as published guides quote them. */
class SectionRulesTest {

  private static final double SQUARE_FOOT = 0.3048 * 0.3048;

  /** A/30 above 1,600 ft2 (published); 2 sqrt(A) from 320 ft2 on (from memory). */
  @Test
  void differencesByArea() {
    assertEquals(0, SectionRules.leastDifferences(319 * SQUARE_FOOT));
    assertEquals(36, SectionRules.leastDifferences(320 * SQUARE_FOOT));
    assertEquals(40, SectionRules.leastDifferences(400 * SQUARE_FOOT));
    assertEquals(80, SectionRules.leastDifferences(1600 * SQUARE_FOOT));
    assertEquals(100, SectionRules.leastDifferences(3000 * SQUARE_FOOT));
    assertEquals(101, SectionRules.leastDifferences(3001 * SQUARE_FOOT));
  }

  @Test
  void distanceFromEdgesAndIslands() throws ParseException {
    Polygon room = room("POLYGON((0 0,9 0,9 6,0 6,0 0),(4 4,5 4,5 5,4 5,4 4))");
    assertEquals(1, SectionRules.fromEdge(room, at(1, 1), at(8, 1)), 1e-12);
    assertEquals(0.5, SectionRules.fromEdge(room, at(1, 3.5), at(8, 3.5)), 1e-12);
    assertEquals(0, SectionRules.fromEdge(room, at(1, 4.5), at(8, 4.5)), 1e-12);
    assertEquals(0, SectionRules.fromEdge(room, at(-1, 1), at(8, 1)), 1e-12);
  }

  @Test
  void onlyParallelLinesBesideEachOtherHaveADistance() {
    assertEquals(OptionalDouble.of(1), SectionRules.apart(at(0, 0), at(5, 0), at(4, 1), at(9, 1)));
    assertEquals(OptionalDouble.of(1), SectionRules.apart(at(0, 0), at(5, 0), at(9, 1), at(4, 1)));
    assertEquals(
        OptionalDouble.empty(), SectionRules.apart(at(0, 0), at(5, 0), at(6, 0.1), at(9, 0.1)));
    assertEquals(
        OptionalDouble.empty(), SectionRules.apart(at(0, 0), at(5, 0), at(1, 1), at(1, 5)));
  }

  @Test
  void sidesInAnyDirection() throws ParseException {
    assertEquals(2.4, SectionRules.side(room("POLYGON((0 0,14 0,14 2.4,0 2.4,0 0))")), 1e-9);
    assertEquals(Math.sqrt(2), SectionRules.side(room("POLYGON((0 0,9 9,8 10,-1 1,0 0))")), 1e-9);
    assertFalse(SectionRules.isShort(2.4, SectionRules.SIDE));
    assertTrue(SectionRules.isShort(2.399, SectionRules.SIDE));
  }

  private static Position at(double x, double y) {
    return new Position(x, y);
  }

  private static Polygon room(String wkt) throws ParseException {
    return (Polygon) new WKTReader().read(wkt);
  }
}
