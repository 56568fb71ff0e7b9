package dev.fillplane.surface;

import static dev.fillplane.surface.TestFloors.ISLAND;
import static dev.fillplane.surface.TestFloors.L_ROOM;
import static dev.fillplane.surface.TestFloors.RECTANGLE;
import static dev.fillplane.surface.TestFloors.crooked;
import static dev.fillplane.surface.TestFloors.room;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Room;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** The sums that pass over clear cells against each triangle and piece clipped by itself. */
class PlaneSumTest {

  private static final double CELL = 0.23;

  @Test
  void partsOfRooms() {
    Random random = new Random(5);
    for (int i = 0; i < 60; i++) {
      Polygon part = room("part", crooked(random)).outline().polygon();
      Polygon hall = room("hall", new double[] {-4, -4, 10, -4, 10, 8, -4, 8}).outline().polygon();
      check(hall, part, random);
    }
  }

  @Test
  void partsWithIslands() {
    Random random = new Random(6);
    Polygon room = room("l", L_ROOM, ISLAND).outline().polygon();
    Polygon other = room("r", RECTANGLE, ISLAND).outline().polygon();
    for (int i = 0; i < 20; i++) {
      check(other, room, random);
    }
  }

  private static void check(Polygon room, Polygon part, Random random) {
    Lattice lattice = Lattice.over(room.getEnvelopeInternal(), CELL);
    Region whole = Region.of(room, lattice, 1e-6 * CELL);
    NodeHeights heights =
        NodeHeights.sample(lattice, List.of(whole), TestFloors.surface(TestFloors::waves));
    FloorSums sums = new FloorSums(lattice, heights);
    double level = 0.012 * random.nextDouble() - 0.006;
    double slopeX = 0.002 * random.nextGaussian();
    double slopeY = random.nextBoolean() ? 0 : 0.002 * random.nextGaussian();
    Region region = Region.of(part, lattice, 1e-9 * CELL);
    Prisms slow = slow(region, lattice, heights, level, slopeX, slopeY);
    equal(slow, sums.prisms(part, 1e-9 * CELL, level, slopeX, slopeY));
    equal(slow, sums.prisms(region, sums.cells(region), level, slopeX, slopeY));
    assertTrue(slow.area() > 1, "a part");
  }

  private static void equal(Prisms expected, Prisms found) {
    assertEquals(expected.area(), found.area(), 1e-11);
    assertEquals(expected.fillArea(), found.fillArea(), 1e-11);
    assertEquals(expected.fillVolume(), found.fillVolume(), 1e-14);
    assertEquals(expected.cutArea(), found.cutArea(), 1e-11);
    assertEquals(expected.cutVolume(), found.cutVolume(), 1e-14);
  }

  private static Prisms slow(
      Region region,
      Lattice lattice,
      NodeHeights heights,
      double level,
      double slopeX,
      double slopeY) {
    double base = level + slopeX * lattice.originX() + slopeY * lattice.originY();
    PlaneSum sum = new PlaneSum(lattice, heights, base, slopeX, slopeY);
    for (int cell : region.whole()) {
      sum.addWhole(cell);
    }
    for (Region.Piece piece : region.pieces()) {
      Ring ring = piece.ring();
      sum.addPiece(piece.cell(), piece.triangle(), ring.x(), ring.y(), ring.size());
    }
    return sum.sum();
  }

  /** What a clear cell is summed by, against the formula of its four triangles at one place. */
  @Test
  void aTinyPartOfACellHasTheFloorOfItsPlace() {
    Room hall = room("r", RECTANGLE);
    Polygon polygon = hall.outline().polygon();
    Lattice lattice = Lattice.over(polygon.getEnvelopeInternal(), 1);
    NodeHeights heights =
        NodeHeights.sample(
            lattice,
            List.of(Region.of(polygon, lattice, 1e-6)),
            TestFloors.surface(TestFloors::waves));
    FloorSums sums = new FloorSums(lattice, heights);
    Random random = new Random(7);
    for (int i = 0; i < 200; i++) {
      double x = 0.01 + 5.9 * random.nextDouble();
      double y = 0.01 + 3.9 * random.nextDouble();
      double[] ring = {x, y, x + 1e-4, y, x + 1e-4, y + 1e-4, x, y + 1e-4};
      Prisms under = sums.prisms(room("p", ring).outline().polygon(), 1e-9, 1, 0, 0);
      double floor = heights.at(x + 5e-5, y + 5e-5);
      assertEquals(1 - floor, under.fillVolume() / under.area(), 1e-6);
    }
  }
}
