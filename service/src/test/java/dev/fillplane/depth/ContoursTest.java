package dev.fillplane.depth;

import static dev.fillplane.surface.TestFloors.ISLAND;
import static dev.fillplane.surface.TestFloors.L_ROOM;
import static dev.fillplane.surface.TestFloors.RECTANGLE;
import static dev.fillplane.surface.TestFloors.crooked;
import static dev.fillplane.surface.TestFloors.room;
import static dev.fillplane.surface.TestFloors.sample;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import dev.fillplane.surface.TestFloors;
import dev.fillplane.target.Plane;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class ContoursTest {

  private static List<Contour> contours(
      java.util.function.DoubleBinaryOperator depth, double level, double[]... rings) {
    return DepthField.of(
            sample((x, y) -> -depth.applyAsDouble(x, y), 0.1, room("r", rings)), Plane.level(0))
        .contours(new double[] {level});
  }

  @Test
  void onASlopeItIsOneStraightLine() {
    List<Position> line = contours((x, y) -> 0.002 * x, 0.0051, RECTANGLE).get(0).lines().get(0);
    assertEquals(2, line.size());
    assertEquals(2.55, line.get(0).x(), 1e-9);
    assertEquals(2.55, line.get(1).x(), 1e-9);
    assertEquals(4, line.get(0).distance(line.get(1)), 1e-9);
  }

  @Test
  void wallsAndIslandsCutIt() {
    Contour contour = contours((x, y) -> 0.002 * y, 0.0023, RECTANGLE, ISLAND).get(0);
    assertEquals(2, contour.lines().size());
    assertEquals(0, contour.lines().get(0).get(0).x(), 1e-9);
    assertEquals(0.9, contour.lines().get(0).get(1).x(), 1e-9);
    assertEquals(2, contour.lines().get(1).get(0).x(), 1e-9);
    assertEquals(6, contour.lines().get(1).get(1).x(), 1e-9);
  }

  @Test
  void innerCornerCutsIt() {
    Contour contour = contours((x, y) -> 0.001 * (x + y), 0.0045, L_ROOM).get(0);
    double length = 0;
    for (List<Position> line : contour.lines()) {
      length += line.get(0).distance(line.get(line.size() - 1));
    }
    // x + y = 4.5 is in the L from (4.5, 0) to (2.5, 2), where x is below 3 to (0.5, 4).
    assertEquals(4 * Math.sqrt(2), length, 1e-9);
  }

  @Test
  void roundAHollowItIsClosed() {
    Contour contour =
        contours((x, y) -> 0.01 - 0.004 * Math.hypot(x - 3.02, y - 2.01), 0.004, RECTANGLE).get(0);
    assertEquals(1, contour.lines().size());
    List<Position> ring = contour.lines().get(0);
    assertEquals(ring.get(0), ring.get(ring.size() - 1));
    double length = 0;
    for (int i = 1; i < ring.size(); i++) {
      length += ring.get(i - 1).distance(ring.get(i));
    }
    assertEquals(2 * Math.PI * 1.5, length, 1e-3 * length);
  }

  @Test
  void levelThatIsNotReachedIsLeftOut() {
    assertTrue(contours((x, y) -> 0.002 * x, 0.02, RECTANGLE).isEmpty());
  }

  @Test
  void flatFloorAtTheLevelHasNoLines() {
    assertTrue(contours((x, y) -> 0.005, 0.005, RECTANGLE).isEmpty());
  }

  @Test
  void everyLineLiesAtItsLevelInsideTheRoom() {
    Random random = new Random(4);
    for (int i = 0; i < 10; i++) {
      Room room = room("r", crooked(random));
      Polygon polygon = room.outline().polygon();
      DepthField depths =
          DepthField.of(sample(TestFloors::waves, 0.2, room), new Plane(0.004, 0.0002, 0.0001));
      double[] levels = {0, 0.001, 0.002, 0.004, 0.006};
      List<Contour> contours = depths.contours(levels);
      assertTrue(contours.size() > 1);
      for (Contour contour : contours) {
        for (List<Position> line : contour.lines()) {
          assertLies(line, contour.depth(), depths, polygon);
        }
      }
      assertEquals(contours, depths.contours(levels));
    }
  }

  private static void assertLies(
      List<Position> line, double level, DepthField depths, Polygon polygon) {
    for (Position p : line) {
      assertEquals(level, depths.at(p.x(), p.y()), 1e-9);
    }
    Coordinate[] coordinates =
        line.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
    var path = new GeometryFactory().createLineString(coordinates);
    assertTrue(polygon.buffer(1e-6).covers(path));
  }

  /**
   * Slow reference: between neighbours of a raster a depth is passed exactly where a line passes.
   */
  @Test
  void noLineIsMissing() {
    Room room = room("r", RECTANGLE);
    DepthField depths = DepthField.of(sample(TestFloors::waves, 0.25, room), Plane.level(0.004));
    var lines = depths.contours(new double[] {0.003}).get(0).lines();
    for (double y = 0.013; y < 4; y += 0.11) {
      int passed = 0;
      for (double x = 0.01; x < 5.99; x += 0.001) {
        passed += depths.at(x, y) >= 0.003 != depths.at(x + 0.001, y) >= 0.003 ? 1 : 0;
      }
      int crossed = 0;
      for (List<Position> line : lines) {
        for (int i = 1; i < line.size(); i++) {
          crossed += line.get(i - 1).y() > y != line.get(i).y() > y ? 1 : 0;
        }
      }
      assertEquals(passed, crossed, "at y " + y);
    }
  }

  @Test
  void metricLevels() {
    assertArrayEquals(
        new double[] {0.002, 0.004, 0.006, 0.008, 0.010},
        ContourLevels.choose(UnitSystem.METRIC, 0.0115),
        1e-15);
    assertArrayEquals(
        new double[] {0.004, 0.008, 0.012, 0.016},
        ContourLevels.choose(UnitSystem.METRIC, 0.019),
        1e-15);
    assertArrayEquals(
        new double[] {0.001, 0.002}, ContourLevels.choose(UnitSystem.METRIC, 0.003), 1e-15);
    assertEquals(0, ContourLevels.choose(UnitSystem.METRIC, 0).length);
    assertEquals(0, ContourLevels.choose(UnitSystem.US, -0.01).length);
  }

  @Test
  void usLevels() {
    assertArrayEquals(
        new double[] {0.003175, 0.00635, 0.009525, 0.0127},
        ContourLevels.choose(UnitSystem.US, 0.0155),
        1e-15);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.0081, 0.009, 0.0101, 0.0183, 0.021, 0.04, 0.047, 0.09, 0.13, 0.19, 0.7})
  void fourToEightLevels(double deepest) {
    for (UnitSystem units : UnitSystem.values()) {
      double[] levels = ContourLevels.choose(units, deepest);
      assertTrue(levels.length >= 4 && levels.length <= 8, units + ": " + levels.length);
      assertTrue(levels[levels.length - 1] < deepest);
    }
  }
}
