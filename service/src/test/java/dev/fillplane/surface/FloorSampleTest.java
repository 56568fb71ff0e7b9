package dev.fillplane.surface;

import static dev.fillplane.surface.TestFloors.ISLAND;
import static dev.fillplane.surface.TestFloors.L_ROOM;
import static dev.fillplane.surface.TestFloors.RECTANGLE;
import static dev.fillplane.surface.TestFloors.crooked;
import static dev.fillplane.surface.TestFloors.moved;
import static dev.fillplane.surface.TestFloors.room;
import static dev.fillplane.surface.TestFloors.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Room;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

class FloorSampleTest {

  private static double tilted(double x, double y) {
    return 0.01 + 0.003 * x - 0.002 * y;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.37, 1, 10})
  void planeIsReproducedEverywhereInTheRooms(double cell) {
    FloorSample floor = sample(FloorSampleTest::tilted, cell, room("l", L_ROOM, ISLAND));
    Random random = new Random(1);
    for (int i = 0; i < 500; i++) {
      double x = 6 * random.nextDouble();
      double y = 4 * random.nextDouble();
      if (floor.covers(x, y)) {
        assertEquals(tilted(x, y), floor.elevation(x, y), 1e-15);
      }
    }
  }

  @Test
  void nodesAreThoseOfTheSurface() {
    FloorSample floor = sample(TestFloors::waves, 0.25, room("r", RECTANGLE));
    assertEquals(TestFloors.waves(1.25, 0.75), floor.elevation(1.25, 0.75), 1e-15);
    assertEquals(TestFloors.waves(1.125, 0.875), floor.elevation(1.125, 0.875), 1e-15);
  }

  @Test
  void betweenNodesItIsLinearAndContinuous() {
    FloorSample floor = sample(TestFloors::waves, 1, room("r", RECTANGLE));
    double corner = TestFloors.waves(2, 1);
    double other = TestFloors.waves(3, 1);
    double centre = TestFloors.waves(2.5, 1.5);
    assertEquals((corner + other + centre) / 3, floor.elevation(2.5, 1 + 0.5 / 3), 1e-15);
    for (double t = 0; t < 1; t += 0.05) {
      double diagonal = floor.elevation(2 + t, 1 + t);
      assertEquals(diagonal, floor.elevation(2 + t, 1 + t + 1e-12), 1e-12);
      assertEquals(diagonal, floor.elevation(2 + t, 1 + t - 1e-12), 1e-12);
    }
  }

  @Test
  void awayFromTheRoomsTheNearestCellAnswers() {
    FloorSample floor = sample(FloorSampleTest::tilted, 0.5, room("l", L_ROOM));
    assertEquals(tilted(6, 1), floor.elevation(9, 1), 1e-15);
    assertEquals(tilted(4.2, 2.5), floor.elevation(4.2, 2.9), 1e-15);
    assertTrue(Double.isFinite(floor.elevation(5.9, 3.9)));
  }

  @Test
  void outsideIsNotCovered() {
    FloorSample floor = sample(FloorSampleTest::tilted, 0.5, room("l", L_ROOM, ISLAND));
    assertTrue(floor.covers(0, 0));
    assertTrue(floor.covers(3, 3));
    assertFalse(floor.covers(3.1, 3));
    assertFalse(floor.covers(1.5, 1));
    assertTrue(floor.covers(0.9, 1));
  }

  @Test
  void areaAndCentroidAreThoseOfThePolygon() {
    Random random = new Random(7);
    for (int i = 0; i < 50; i++) {
      Room room = room("r", moved(crooked(random), i, 1e6 * (i % 2), -2e5));
      FloorSample floor = sample((x, y) -> 0, 0.05 + 0.01 * i, room);
      Polygon polygon = room.outline().polygon();
      Point centroid = polygon.getCentroid();
      assertEquals(polygon.getArea(), floor.under(1, 0, 0, 0).area(), 1e-8);
      assertEquals(centroid.getX(), floor.centroid().x(), 1e-7);
      assertEquals(centroid.getY(), floor.centroid().y(), 1e-7);
    }
  }

  @Test
  void cellsAddUpToTheRoom() {
    FloorSample floor = sample(FloorSampleTest::tilted, 0.3, room("l", L_ROOM, ISLAND));
    FloorCells cells = floor.cells(0);
    double area = 0;
    for (int i = 0; i < cells.count(); i++) {
      area += cells.area()[i];
      assertEquals(tilted(cells.x()[i], cells.y()[i]), cells.elevation()[i], 1e-13);
      assertTrue(cells.area()[i] <= 0.09 + 1e-15);
    }
    assertEquals(18 - 0.77, area, 1e-12);
  }

  /** Slow reference: no place of a fine raster is higher or lower than the points. */
  @Test
  void pointsHoldTheHighestAndTheLowest() {
    Random random = new Random(3);
    for (int i = 0; i < 5; i++) {
      Room room = room("r", crooked(random));
      Polygon polygon = room.outline().polygon();
      FloorSample floor = sample(TestFloors::waves, 0.4, room);
      double most = Double.NEGATIVE_INFINITY;
      double least = Double.POSITIVE_INFINITY;
      for (int k = 0; k < floor.points().count(); k++) {
        double x = floor.points().x()[k];
        double y = floor.points().y()[k];
        most = Math.max(most, floor.points().elevation()[k]);
        least = Math.min(least, floor.points().elevation()[k]);
        assertTrue(
            polygon.distance(new GeometryFactory().createPoint(new Coordinate(x, y))) < 1e-12);
      }
      double highest = Double.NEGATIVE_INFINITY;
      double lowest = Double.POSITIVE_INFINITY;
      for (double x = -1; x < 7; x += 0.02) {
        for (double y = -2; y < 6; y += 0.02) {
          if (floor.covers(x, y)) {
            highest = Math.max(highest, floor.elevation(x, y));
            lowest = Math.min(lowest, floor.elevation(x, y));
          }
        }
      }
      assertTrue(highest <= most && highest > most - 2e-4);
      assertTrue(lowest >= least && lowest < least + 2e-4);
    }
  }
}
