package dev.fillplane.depth;

import static dev.fillplane.surface.TestFloors.ISLAND;
import static dev.fillplane.surface.TestFloors.L_ROOM;
import static dev.fillplane.surface.TestFloors.RECTANGLE;
import static dev.fillplane.surface.TestFloors.TRIANGLE;
import static dev.fillplane.surface.TestFloors.moved;
import static dev.fillplane.surface.TestFloors.room;
import static dev.fillplane.surface.TestFloors.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Room;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.target.Plane;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class DepthFieldTest {

  /** For planes everything is exact but for rounding. */
  private static final double EXACT = 1e-9;

  /** Clipped prisms over the triangle of {@code PrismSumTest}, here as rooms with a plane floor. */
  @ParameterizedTest
  @CsvSource({
    "10, -5, -5, 8.88889",
    "10,  4, -8, 16.74074",
    " 9,  6,  3, 36",
    "12,  0, -6, 16",
    "-1, -2, -3, 0"
  })
  void clippedPrisms(double a, double b, double c, double litres) {
    DoubleBinaryOperator floor = (x, y) -> -(a + (b - a) * x / 4 + (c - a) * y / 3) / 1e3;
    for (double cell : new double[] {0.1, 0.33, 5}) {
      DepthField depths = DepthField.of(sample(floor, cell, room("t", TRIANGLE)), Plane.level(0));
      assertEquals(litres, depths.volume() * 1e3, 5e-6);
      assertEquals((a + b + c) * 2, (depths.volume() - depths.grindVolume()) * 1e3, EXACT);
      assertEquals(Math.max(a, Math.max(b, c)), depths.maximum() * 1e3, EXACT);
      assertEquals(Math.min(a, Math.min(b, c)), depths.minimum() * 1e3, EXACT);
    }
  }

  /**
   * One cell of 50 x 50 ft, corners 87.6 87.6 87.6 88.6, target 90: 5375 ft3 [V] (plane surveying
   * notes, Univ. Melbourne).
   */
  @Test
  void oneCell() {
    double[] square = {0, 0, 50, 0, 50, 50, 0, 50};
    FloorSample floor = sample((x, y) -> 87.6 + x * y / 2500, 50, room("cell", square));
    DepthField depths = DepthField.of(floor, Plane.level(90));
    assertEquals(5375, depths.volume(), 1e-9);
    assertEquals(2.15, depths.mean(), 1e-12);
  }

  /** V = A/4 (sum h1 + 2 sum h2 + 3 sum h3 + 4 sum h4) [C], on an L of three cells and on 3 x 2. */
  @Test
  void rectangularCells() {
    DoubleBinaryOperator bilinear = (x, y) -> -3 - x * y - 2 * x;
    double[] l = {0, 0, 2, 0, 2, 1, 1, 1, 1, 2, 0, 2};
    double h1 = depth(0, 0) + depth(2, 0) + depth(2, 1) + depth(1, 2) + depth(0, 2);
    double h2 = depth(1, 0) + depth(0, 1);
    double h3 = depth(1, 1);
    DepthField depths = DepthField.of(sample(bilinear, 1, room("l", l)), Plane.level(0));
    assertEquals((h1 + 2 * h2 + 3 * h3) / 4, depths.volume(), 1e-12);
  }

  private static double depth(double x, double y) {
    return 3 + x * y + 2 * x;
  }

  /** A plane floor: volume is wet area times the depth at its centroid, wet part cut by JTS. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.3, 0.7853981633974483, 1.5707963267948966, 2.5, 4})
  void planesAtAnyRotation(double angle) {
    for (double[][] rings : new double[][][] {{L_ROOM}, {TRIANGLE}, {RECTANGLE, ISLAND}}) {
      double[][] turned = new double[rings.length][];
      for (int i = 0; i < rings.length; i++) {
        turned[i] = moved(rings[i], angle, 12, -7);
      }
      for (double offset : new double[] {0.05, 0.001, -0.002, -0.05}) {
        assertPlane(room("r", turned), new Plane(offset, 0.003, 0.002));
      }
    }
  }

  /** Depth {@code offset + slopes * (position - centroid)}, between a sloped target and floor. */
  private static void assertPlane(Room room, Plane slope) {
    Polygon polygon = room.outline().polygon();
    Coordinate middle = polygon.getCentroid().getCoordinate();
    DoubleBinaryOperator depth = (x, y) -> slope.at(x - middle.x, y - middle.y);
    Plane target = new Plane(0.4, -0.001, 0.0007);
    FloorSample floor = sample((x, y) -> target.at(x, y) - depth.applyAsDouble(x, y), 0.1, room);
    DepthField depths = DepthField.of(floor, target);
    Geometry wet = polygon.intersection(halfPlane(slope, middle));
    double expected = 0;
    if (!wet.isEmpty()) {
      Coordinate c = wet.getCentroid().getCoordinate();
      expected = wet.getArea() * depth.applyAsDouble(c.x, c.y);
    }
    assertEquals(polygon.getArea(), depths.area(), EXACT);
    assertEquals(wet.getArea(), depths.pouredArea(), EXACT);
    assertEquals(expected, depths.volume(), EXACT * 1e-1);
    assertEquals(
        polygon.getArea() * slope.elevation(),
        depths.volume() - depths.grindVolume(),
        EXACT * 1e-1);
    assertEquals(polygon.getArea() - wet.getArea(), depths.grindArea(), EXACT);
  }

  /** Where the slope about a middle is not negative, 100 m wide. */
  private static Polygon halfPlane(Plane slope, Coordinate middle) {
    double length = slope.slope();
    double ux = slope.slopeX() / length;
    double uy = slope.slopeY() / length;
    double x = middle.x - ux * slope.elevation() / length;
    double y = middle.y - uy * slope.elevation() / length;
    return new GeometryFactory()
        .createPolygon(
            new Coordinate[] {
              new Coordinate(x - 100 * uy, y + 100 * ux),
              new Coordinate(x + 100 * uy, y - 100 * ux),
              new Coordinate(x + 100 * uy + 100 * ux, y - 100 * ux + 100 * uy),
              new Coordinate(x - 100 * uy + 100 * ux, y + 100 * ux + 100 * uy),
              new Coordinate(x - 100 * uy, y + 100 * ux)
            });
  }

  /** A cone with its tip in the middle: pi r^2 h / 3, the cells being fine enough for 0.1 %. */
  @Test
  void cone() {
    FloorSample floor =
        sample((x, y) -> 0.01 * Math.hypot(x - 3.01, y - 2.02), 0.05, room("r", RECTANGLE));
    DepthField depths = DepthField.of(floor, Plane.level(0.015));
    double expected = Math.PI * 1.5 * 1.5 * 0.015 / 3;
    assertEquals(expected, depths.volume(), 1e-3 * expected);
  }

  @Test
  void deepestAndHighest() {
    FloorSample floor = sample((x, y) -> 0.001 * x - 0.002 * y, 0.1, room("r", RECTANGLE));
    DepthField depths = DepthField.of(floor, Plane.level(0.01));
    assertEquals(0, depths.deepest().x(), EXACT);
    assertEquals(4, depths.deepest().y(), EXACT);
    assertEquals(0.018, depths.deepest().depth(), EXACT);
    assertEquals(6, depths.highest().x(), EXACT);
    assertEquals(0, depths.highest().y(), EXACT);
    assertEquals(0.006, depths.highest().elevation(), EXACT);
  }

  @Test
  void ofSeveralDeepestTheSouthWesternIsTold() {
    FloorSample floor = sample((x, y) -> 1e-16 * Math.sin(50 * x), 0.1, room("r", RECTANGLE));
    Deepest deepest = DepthField.of(floor, Plane.level(0.01)).deepest();
    assertEquals(0, deepest.x());
    assertEquals(0, deepest.y());
  }

  @Test
  void gridHasDepthsInsideAndTheMarkerOutside() {
    FloorSample floor = sample((x, y) -> 0.001 * x, 0.5, room("l", L_ROOM, ISLAND));
    Grid grid = DepthField.of(floor, Plane.level(0.003)).grid();
    assertEquals(12, grid.columns());
    assertEquals(8, grid.rows());
    assertEquals(0.003 - 0.00025, grid.depth(0, 0), EXACT);
    assertEquals(0, grid.depth(10, 1));
    assertEquals(Grid.OUTSIDE, grid.depth(10, 6));
    assertEquals(Grid.OUTSIDE, grid.depth(2, 2));
    for (int i = 0; i < grid.depths().length; i++) {
      boolean inside = floor.covers(grid.x(i % 12), grid.y(i / 12));
      assertEquals(inside, grid.covers(i % 12, i / 12));
      assertTrue(grid.depths()[i] >= 0 || !inside);
    }
  }
}
