package dev.fillplane.depth;

import static dev.fillplane.surface.TestFloors.ISLAND;
import static dev.fillplane.surface.TestFloors.RECTANGLE;
import static dev.fillplane.surface.TestFloors.crooked;
import static dev.fillplane.surface.TestFloors.moved;
import static dev.fillplane.surface.TestFloors.room;
import static dev.fillplane.surface.TestFloors.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Room;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.TestFloors;
import dev.fillplane.target.Plane;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** What must hold on crooked rooms (seeded) and wavy floors that the target cuts. */
class DepthFieldPropertyTest {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final Plane TARGET = new Plane(0.001, 0.0004, -0.0003);

  @Test
  void partsOfARoomAddUpToIt() {
    Random random = new Random(11);
    for (int i = 0; i < 20; i++) {
      Room room = room("r", crooked(random));
      DepthField depths = DepthField.of(sample(TestFloors::waves, 0.13, room), TARGET);
      double area = 0;
      double volume = 0;
      for (Polygon strip : strips(room.outline().polygon(), 0.45, random.nextDouble() * 3)) {
        Fill fill = depths.within(strip);
        area += fill.area();
        volume += fill.volume();
      }
      assertEquals(depths.pouredArea(), area, 1e-9 * depths.pouredArea());
      assertEquals(depths.volume(), volume, 1e-9 * depths.volume());
    }
  }

  @Test
  void aPartThatWasCutFromARoomNeedNotBeCutAgain() {
    Random random = new Random(12);
    for (int i = 0; i < 10; i++) {
      double[] ring = crooked(random);
      Room west = room("w", ring);
      Room east = room("e", moved(ring, 0, 13, 0));
      DepthField depths = DepthField.of(sample(TestFloors::waves, 0.13, west, east), TARGET);
      for (Room room : List.of(west, east)) {
        for (Polygon strip : strips(room.outline().polygon(), 0.45, random.nextDouble() * 3)) {
          Fill cutAgain = depths.within(strip);
          assertEquals(cutAgain.area(), depths.within(room, strip).area(), 1e-9);
          assertEquals(cutAgain.volume(), depths.within(room, strip).volume(), 1e-12);
        }
      }
    }
  }

  /** Strips across a room, at an angle, cut out of it. */
  private static List<Polygon> strips(Polygon room, double width, double angle) {
    List<Polygon> strips = new ArrayList<>();
    for (double at = -12; at < 12; at += width) {
      double[] ring =
          moved(new double[] {at, -12, at + width, -12, at + width, 12, at, 12}, angle, 0, 0);
      Geometry part = room.intersection(room("s", ring).outline().polygon());
      for (int i = 0; i < part.getNumGeometries(); i++) {
        if (part.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
          strips.add(polygon);
        }
      }
    }
    return strips;
  }

  @Test
  void wholeRoomIsAPartOfItself() {
    Room room = room("r", RECTANGLE, ISLAND);
    DepthField depths = DepthField.of(sample(TestFloors::waves, 0.1, room), TARGET);
    Polygon box = (Polygon) GEOMETRY.toGeometry(new Envelope(-5, 20, -5, 20));
    assertEquals(depths.volume(), depths.within(box).volume(), 1e-12);
    assertEquals(depths.volume(), depths.within(room.outline().polygon()).volume(), 1e-12);
    Polygon elsewhere = (Polygon) GEOMETRY.toGeometry(new Envelope(10, 20, -5, 20));
    assertEquals(new Fill(0, 0), depths.within(elsewhere));
  }

  @Test
  void splittingARoomChangesNothing() {
    Room whole = room("r", RECTANGLE);
    Room west = room("w", new double[] {0, 0, 2.37, 0, 3.11, 4, 0, 4});
    Room east = room("e", new double[] {2.37, 0, 6, 0, 6, 4, 3.11, 4});
    DepthField one = DepthField.of(sample(TestFloors::waves, 0.1, whole), TARGET);
    DepthField two = DepthField.of(sample(TestFloors::waves, 0.1, west, east), TARGET);
    assertEquals(one.volume(), two.volume(), 1e-12);
    assertEquals(one.pouredArea(), two.pouredArea(), 1e-11);
    assertEquals(one.maximum(), two.maximum(), 1e-12);
    assertEquals(one.minimum(), two.minimum(), 1e-12);
    assertEquals(two.volume(), two.rooms().get(0).volume() + two.rooms().get(1).volume(), 1e-15);
    Fill alone = DepthField.of(sample(TestFloors::waves, 0.1, west), TARGET).rooms().get(0);
    assertEquals(alone.volume(), two.rooms().get(0).volume(), 1e-12);
  }

  @Test
  void raisingTheTargetOverAWetFloorAddsThatLayer() {
    Random random = new Random(5);
    for (int i = 0; i < 10; i++) {
      FloorSample floor = sample(TestFloors::waves, 0.2, room("r", crooked(random)));
      DepthField low = DepthField.of(floor, Plane.level(0.02));
      DepthField high = DepthField.of(floor, Plane.level(0.023));
      assertEquals(low.area() * 0.003, high.volume() - low.volume(), 1e-12);
      assertEquals(0, low.grindVolume());
    }
  }

  @Test
  void deeperThanIsThePourUnderALowerTarget() {
    Random random = new Random(7);
    for (int i = 0; i < 10; i++) {
      FloorSample floor = sample(TestFloors::waves, 0.2, room("r", crooked(random)));
      double depth = 0.006 * random.nextDouble();
      DepthField field = DepthField.of(floor, TARGET);
      DepthField lower = DepthField.of(floor, new Plane(0.001 - depth, 0.0004, -0.0003));
      assertEquals(lower.volume(), field.deeperThan(depth).volume(), 1e-15);
      assertEquals(lower.pouredArea(), field.deeperThan(depth).area(), 1e-12);
      assertEquals(new Fill(field.pouredArea(), field.volume()), field.deeperThan(0));
    }
  }

  /** Stated tolerance for turning: 0.1 %, as the cells then lie otherwise on a bent floor. */
  @Test
  void turningChangesNothingButTheCells() {
    Random random = new Random(6);
    for (int i = 0; i < 6; i++) {
      double[] ring = crooked(random);
      DepthField straight =
          DepthField.of(sample(TestFloors::waves, 0.1, room("r", ring)), Plane.level(0.001));
      double angle = 0.4 + i;
      FloorSample turned =
          sample(
              (x, y) ->
                  TestFloors.waves(
                      Math.cos(angle) * x + Math.sin(angle) * y,
                      Math.cos(angle) * y - Math.sin(angle) * x),
              0.1,
              room("r", moved(ring, angle, 0, 0)));
      DepthField depths = DepthField.of(turned, Plane.level(0.001));
      assertEquals(straight.volume(), depths.volume(), 1e-3 * straight.volume());
      assertEquals(straight.grindVolume(), depths.grindVolume(), 1e-3 * straight.volume());
      assertEquals(straight.maximum(), depths.maximum(), 2e-5);
    }
  }

  /** Stated tolerance for shifting: 1e-9, even by 1000 km. */
  @Test
  void shiftingChangesNothing() {
    double shift = 1 << 20;
    double[] ring = crooked(new Random(8));
    DepthField near = DepthField.of(sample(TestFloors::waves, 0.1, room("r", ring)), TARGET);
    FloorSample floor =
        sample(
            (x, y) -> TestFloors.waves(x - shift, y + shift),
            0.1,
            room("r", moved(ring, 0, shift, -shift)));
    Plane target =
        new Plane(
            TARGET.elevation() - TARGET.slopeX() * shift + TARGET.slopeY() * shift,
            TARGET.slopeX(),
            TARGET.slopeY());
    DepthField far = DepthField.of(floor, target);
    assertEquals(near.volume(), far.volume(), 1e-9 * near.volume());
    assertEquals(near.pouredArea(), far.pouredArea(), 1e-7 * near.pouredArea());
    assertEquals(near.maximum(), far.maximum(), 1e-9);
    assertEquals(near.deepest().x(), far.deepest().x() - shift, 1e-8);
  }

  /** Slow reference: the sum over cells of 1 cm; their staircase along the walls costs 0.1 %. */
  @Test
  void summationOverFineCellsAgrees() {
    Random random = new Random(9);
    for (int i = 0; i < 4; i++) {
      FloorSample floor = sample(TestFloors::waves, 0.3, room("r", crooked(random)));
      DepthField depths = DepthField.of(floor, TARGET);
      double fill = 0;
      double cut = 0;
      for (double x = -0.795; x < 7; x += 0.01) {
        for (double y = -1.795; y < 6; y += 0.01) {
          if (floor.covers(x, y)) {
            double depth = TARGET.at(x, y) - floor.elevation(x, y);
            fill += 1e-4 * Math.max(0, depth);
            cut -= 1e-4 * Math.min(0, depth);
          }
        }
      }
      assertEquals(fill, depths.volume(), 1e-3 * fill);
      assertEquals(cut, depths.grindVolume(), 1e-3 * fill);
    }
  }

  @Test
  void atIsTargetMinusFloor() {
    FloorSample floor = sample(TestFloors::waves, 0.2, room("r", RECTANGLE));
    DepthField depths = DepthField.of(floor, TARGET);
    Coordinate at = new Coordinate(2.345, 1.234);
    assertEquals(TARGET.at(at.x, at.y) - floor.elevation(at.x, at.y), depths.at(at.x, at.y));
    assertTrue(depths.minimum() < 0, "the floor of these tests is cut by the target");
  }
}
