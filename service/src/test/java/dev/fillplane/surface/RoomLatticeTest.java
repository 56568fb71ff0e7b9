package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class RoomLatticeTest {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  @Test
  void cellsFillARectangle() {
    RoomLattice lattice = RoomLattice.over(List.of(rectangle(0, 4, 0, 2)), 1, 500);
    assertEquals(8, lattice.count());
    assertEquals(0, lattice.cellAt(0.2, 0.9));
    assertEquals(5, lattice.cellAt(1.5, 1.5));
    assertEquals(1.5, lattice.centreX(5), 1e-12);
    assertEquals(1.5, lattice.centreY(5), 1e-12);
    assertEquals(7, lattice.cellAt(4, 2));
    assertEquals(7, lattice.cellAt(9, 9));
  }

  @Test
  void cellsAreNoWiderThanAsked() {
    RoomLattice lattice = RoomLattice.over(List.of(rectangle(0, 4.2, 0, 2)), 1, 500);
    assertEquals(10, lattice.count());
    assertEquals(0.42, lattice.centreX(0), 1e-12);
  }

  @Test
  void onlyCellsThatReachIntoARoomCount() {
    Polygon corner = polygon(0, 0, 4, 0, 4, 1, 1, 1, 1, 4, 0, 4, 0, 0);
    RoomLattice lattice = RoomLattice.over(List.of(corner), 1, 500);
    assertEquals(7, lattice.count());
    assertEquals(6, lattice.cellAt(0.5, 3.5));
    assertEquals(6, lattice.cellAt(2, 3.9));
  }

  @Test
  void everyPositionInsideHasItsCell() {
    Polygon slanted = polygon(0, 0, 7, 2, 6, 6, 2, 5, 0, 0);
    RoomLattice lattice = RoomLattice.over(List.of(slanted, rectangle(20, 21, 0, 3)), 0.7, 500);
    Random random = new Random(4);
    for (int i = 0; i < 2000; i++) {
      double x = 7 * random.nextDouble();
      double y = 6 * random.nextDouble();
      if (slanted.covers(GEOMETRY.createPoint(new Coordinate(x, y)))) {
        int cell = lattice.cellAt(x, y);
        assertTrue(Math.abs(lattice.centreX(cell) - x) <= 0.35 + 1e-9);
        assertTrue(Math.abs(lattice.centreY(cell) - y) <= 0.35 + 1e-9);
      }
    }
  }

  @Test
  void bigFloorsHaveWiderCells() {
    int count = RoomLattice.over(List.of(rectangle(0, 100, 0, 60)), 0.5, 500).count();
    assertTrue(count > 400 && count <= 500, "cells " + count);
  }

  @Test
  void oddRoomsAreSafe() {
    List<Polygon> far = new ArrayList<>();
    for (int i = 0; i < 50; i++) {
      far.add(rectangle(1000 * i, 1000 * i + 4, 2000 * i, 2000 * i + 3));
    }
    int count = RoomLattice.over(far, 0.1, 500).count();
    assertTrue(count >= 50 && count <= 500, "cells " + count);
    RoomLattice spot = RoomLattice.over(List.of(rectangle(3, 3, 4, 4)), 0, 500);
    assertEquals(1, spot.count());
    assertEquals(3, spot.centreX(0), 0.001);
    Polygon thin = polygon(0, 0, 1000, 1000, 1000, 1000.001, 0, 0.001, 0, 0);
    assertTrue(RoomLattice.over(List.of(thin), 0.1, 500).count() <= 500);
  }

  private static Polygon rectangle(double x1, double x2, double y1, double y2) {
    return polygon(x1, y1, x2, y1, x2, y2, x1, y2, x1, y1);
  }

  private static Polygon polygon(double... xy) {
    Coordinate[] ring = new Coordinate[xy.length / 2];
    for (int i = 0; i < ring.length; i++) {
      ring[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
    }
    return GEOMETRY.createPolygon(ring);
  }
}
