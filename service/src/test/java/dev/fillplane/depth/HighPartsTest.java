package dev.fillplane.depth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Outline;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Parts of a lattice of 0.1 m over a room of 4 m by 3 m, nodes at the centres of the cells. */
class HighPartsTest {

  private static final double CELL = 0.1;
  private static final Polygon ROOM =
      (Polygon) new GeometryFactory().toGeometry(new Envelope(0, 4, 0, 3));
  private static final UnaryOperator<Coordinate> ON_PLAN =
      node -> new Coordinate((node.x + 0.5) * CELL, (node.y + 0.5) * CELL);

  private static List<Polygon> parts(DoubleBinaryOperator value, double level) {
    double[] known = new double[40 * 30];
    for (int i = 0; i < known.length; i++) {
      Coordinate at = ON_PLAN.apply(new Coordinate(i % 40, Math.floorDiv(i, 40)));
      known[i] = value.applyAsDouble(at.x, at.y);
    }
    return HighParts.of(CarriedNodes.of(40, 30, known), level, ROOM, ON_PLAN);
  }

  private static double cone(double x, double y, double atX, double atY) {
    return 1 - Math.hypot(x - atX, y - atY);
  }

  @Test
  void coneIsCutInACircle() {
    List<Polygon> parts = parts((x, y) -> cone(x, y, 2, 1.5), 0.5);
    assertEquals(1, parts.size());
    assertEquals(Math.PI * 0.25, parts.get(0).getArea(), 0.01);
  }

  @Test
  void aConeAtTheCornerEndsAtTheWalls() {
    List<Polygon> parts = parts((x, y) -> cone(x, y, 0, 0), 0.5);
    assertEquals(Math.PI * 0.25 / 4, parts.get(0).getArea(), 0.003);
    assertEquals(0, parts.get(0).getEnvelopeInternal().getMinX(), 1e-12);
  }

  @Test
  void twoConesAreTwoPartsTheLargestFirst() {
    List<Polygon> parts =
        parts((x, y) -> Math.max(cone(x, y, 1, 1.5), cone(x, y, 3, 1.5) - 0.2), 0.5);
    assertEquals(2, parts.size());
    assertEquals(1, parts.get(0).getCentroid().getX(), 0.01);
    assertEquals(Math.PI * 0.09, parts.get(1).getArea(), 0.01);
  }

  @Test
  void aRingWallHasAHole() {
    Polygon part = parts((x, y) -> -Math.abs(Math.hypot(x - 2, y - 1.5) - 1), -0.2).get(0);
    assertEquals(1, part.getNumInteriorRing());
    assertEquals(Math.PI * (1.44 - 0.64), part.getArea(), 0.02);
  }

  @Test
  void anAllHighRoomIsTheRoom() {
    Polygon part = parts((x, y) -> 1, 0).get(0);
    assertEquals(12, part.getArea(), 1e-9);
    assertEquals(5, HighParts.outline(part).rings().get(0).size());
  }

  @Test
  void nothingHighIsNothing() {
    assertTrue(parts((x, y) -> 0, 1).isEmpty());
  }

  @Test
  void anOutlineIsWithinTwoCentimetresAndShorter() {
    Polygon part = parts((x, y) -> cone(x, y, 2, 1.5), 0.5).get(0);
    Outline outline = HighParts.outline(part);
    assertTrue(outline.rings().get(0).size() < part.getNumPoints());
    assertTrue(outline.polygon().symDifference(part).getArea() < 0.02 * part.getLength());
  }
}
