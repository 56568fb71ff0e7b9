package dev.fillplane.room;

import static dev.fillplane.room.RoomBuilder.box;
import static dev.fillplane.room.RoomBuilder.rectangle;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

class FloorplanTest {

  private static final List<Room> ROOMS =
      RoomBuilder.rooms(
          rectangle("hall", 0, 0, 6, 4).ring(box(2, 1, 1, 1)),
          rectangle("store", 6.06, 0, 2, 4),
          new RoomBuilder("L", 0, 5, 4, 5, 4, 6, 1, 6, 1, 9, 0, 9, 0, 5));

  private static void check(int room, double x, double y) {
    OptionalInt found = new Floorplan(ROOMS).roomAt(x, y);
    assertEquals(room < 0 ? OptionalInt.empty() : OptionalInt.of(room), found);
  }

  @Test
  void insideAndOnTheOutline() {
    check(0, 1, 1);
    check(0, 0, 0);
    check(0, 6, 2);
    check(1, 7, 1);
    check(2, 3, 5.5);
  }

  @Test
  void outsideAndInTheNotch() {
    check(-1, 20, 20);
    check(-1, 3, 8);
    check(-1, 3, 4.5);
  }

  @Test
  void islandIsNotFloorButItsRimIs() {
    check(-1, 2.5, 1.5);
    check(0, 2.04, 1.5);
    check(-1, 2.06, 1.5);
  }

  @Test
  void fiveCentimetresBeside() {
    check(0, -0.049, 2);
    check(-1, -0.051, 2);
    check(-1, -0.04, -0.04);
  }

  @Test
  void theNearerRoomWinsInTheWall() {
    check(0, 6.02, 2);
    check(1, 6.04, 2);
  }

  /** Against the plain distance to each polygon. */
  @Test
  void sameAsPlainDistances() {
    GeometryFactory geometry = new GeometryFactory();
    List<Polygon> polygons = ROOMS.stream().map(room -> room.outline().polygon()).toList();
    Floorplan plan = new Floorplan(ROOMS);
    Random random = new Random(3);
    for (int i = 0; i < 20_000; i++) {
      Coordinate at =
          new Coordinate(-0.2 + 8.6 * random.nextDouble(), -0.2 + 9.4 * random.nextDouble());
      Point point = geometry.createPoint(at);
      int nearest = -1;
      for (int r = 0; r < polygons.size(); r++) {
        double distance = polygons.get(r).distance(point);
        double best =
            nearest < 0 ? Math.nextUp(Floorplan.BESIDE) : polygons.get(nearest).distance(point);
        nearest = distance < best ? r : nearest;
      }
      OptionalInt expected = nearest < 0 ? OptionalInt.empty() : OptionalInt.of(nearest);
      assertEquals(expected, plan.roomAt(at.x, at.y), at.toString());
    }
  }
}
