package dev.fillplane.screed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.Move;
import dev.fillplane.bay.TestRooms;
import dev.fillplane.bay.TiltedDepths;
import dev.fillplane.depth.Depths;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

class PinsAndRailsTest {

  private static final double SCREED = 2.0;

  /** Common practice, no source: a pour of 4 mm wants no rails; pins 1.5 to 2 m apart instead. */
  @Test
  void thinPourHasPinsAndNoRails() {
    Depths thin = TiltedDepths.even(0.004);
    BayPlan plan = plan(TestRooms.hall(), thin);
    assertEquals(List.of(), Rails.of(plan, SCREED));
    // 6 m by 4 m: three rows 2 m apart, two 2 m apart.
    List<Pin> pins = Pins.of(plan);
    assertEquals(6, pins.size());
    assertEquals(0.004, pins.get(0).height());
    for (Pin pin : pins) {
      double nearest =
          pins.stream()
              .filter(other -> other != pin)
              .mapToDouble(o -> Math.hypot(o.x() - pin.x(), o.y() - pin.y()))
              .min()
              .orElseThrow();
      assertTrue(nearest >= 1.5 - 1e-9 && nearest <= 2.0 + 1e-9, "" + nearest);
    }
  }

  @Test
  void deepPourHasRailsAndNoPins() {
    Depths deep = new TiltedDepths(0.020, 0.002, 0);
    BayPlan plan = plan(TestRooms.hall(), deep);
    assertEquals(List.of(), Pins.of(plan));
    // 4 m less 0.3 m from both walls: 3.4 m in gaps of at most 1.8 m.
    List<Rail> rails = Rails.of(plan, SCREED);
    assertEquals(3, rails.size());
    double[] y = rails.stream().mapToDouble(rail -> rail.from().y()).sorted().toArray();
    assertEquals(0.3, y[0], 1e-9);
    assertEquals(2.0, y[1], 1e-9);
    assertEquals(3.7, y[2], 1e-9);
    for (Rail rail : rails) {
      // Travel goes west, from x = 6 to the exit at x = 0.
      assertEquals(5.99, rail.from().x(), 1e-9);
      assertEquals(0.01, rail.to().x(), 1e-9);
      assertEquals(rail.from().y(), rail.to().y(), 1e-9);
      assertEquals(7, rail.stations().size());
      assertEquals(0.020 + 0.002 * 5.99, rail.stations().get(0).height(), 1e-9);
      assertEquals(5.98, rail.stations().get(6).at(), 1e-9);
      assertEquals(0.020 + 0.002 * 0.01, rail.stations().get(6).height(), 1e-9);
    }
  }

  /** 3 mm at the exit, 45 mm at the far wall: 10 mm is reached at x = 1 m. */
  @Test
  void railsEndWhereThePourRunsOutAndPinsGoOn() {
    Depths wedge = new TiltedDepths(0.003, 0.007, 0);
    BayPlan plan = plan(TestRooms.hall(), wedge);
    List<Rail> rails = Rails.of(plan, SCREED);
    assertEquals(3, rails.size());
    for (Rail rail : rails) {
      assertEquals(5.99, rail.from().x(), 1e-9);
      assertEquals(1, rail.to().x(), 0.1);
      assertTrue(rail.stations().stream().allMatch(station -> station.height() >= 0.010));
    }
    List<Pin> pins = Pins.of(plan);
    // Rows at x = 1, 3 and 5 m: the first is at 10 mm and has the rail.
    assertEquals(List.of(), pins);
    Depths thinner = new TiltedDepths(0.001, 0.008, 0);
    assertEquals(2, Pins.of(plan(TestRooms.hall(), thinner)).size());
  }

  @Test
  void railsTurnAtFifteenMillimetres() {
    assertTrue(Rails.of(plan(TestRooms.hall(), even(14.9)), SCREED).isEmpty());
    assertFalse(Rails.of(plan(TestRooms.hall(), even(15.1)), SCREED).isEmpty());
    assertFalse(Pins.of(plan(TestRooms.hall(), even(14.9))).isEmpty());
    assertTrue(Pins.of(plan(TestRooms.hall(), even(15.1))).isEmpty());
  }

  @Test
  void railsEndAtAColumn() {
    Room room = TestRooms.hallWithColumn();
    Depths deep = even(25);
    // 3.4 m in gaps of at most 0.8 m: 0.3, 0.98, 1.66, 2.34 (through the column), 3.02, 3.7.
    List<Rail> rails = Rails.of(plan(room, deep), 1.0);
    assertEquals(6 + 1, rails.size());
    assertInside(room, rails);
  }

  @Test
  void innerWallOfAnEllHasARailToo() {
    Room room = TestRooms.ell();
    Depths deep = even(25);
    List<Rail> rails = Rails.of(plan(room, deep), 3.0);
    assertInside(room, rails);
    assertTrue(rails.stream().anyMatch(rail -> Math.abs(rail.from().y() - 2.7) < 0.21));
  }

  @Test
  void pinsStandInsideOnWhatIsPoured() {
    Random random = new Random(3);
    List<Room> rooms =
        List.of(
            TestRooms.hall(), TestRooms.ell(), TestRooms.horseshoe(), TestRooms.hallWithColumn());
    for (int i = 0; i < 40; i++) {
      Room still = rooms.get(i % 4);
      TiltedDepths tilt =
          new TiltedDepths(0.004, 0.003 * (random.nextDouble() - 0.5), 0.001 * random.nextDouble());
      Move move = new Move(9 * random.nextDouble(), 9, 7 * random.nextDouble());
      Room room = move.of(still);
      Depths depths = tilt.moved(move);
      List<Pin> pins = Pins.of(plan(room, depths));
      assertFalse(pins.isEmpty());
      assertEquals(Pins.of(plan(still, tilt)).size(), pins.size());
      Polygon floor = room.outline().polygon();
      for (Pin pin : pins) {
        Point place = new GeometryFactory().createPoint(new Coordinate(pin.x(), pin.y()));
        assertTrue(floor.contains(place));
        assertTrue(floor.getBoundary().distance(place) >= 0.2 - 1e-9);
        assertEquals(depths.at(pin.x(), pin.y()), pin.height(), 1e-12);
        assertTrue(pin.height() > 0);
      }
    }
  }

  @Test
  void smallRoomsAndSmallPoolsGetOnePin() {
    Room closet = TestRooms.room("closet", TestRooms.rectangle(0, 0, 0.35, 0.9));
    assertEquals(1, Pins.of(plan(closet, even(5))).size());
    // Only the easternmost 0.5 m of the hall is poured.
    Depths pool = new TiltedDepths(-0.055, 0.010, 0);
    List<Pin> pins = Pins.of(plan(TestRooms.hall(), pool));
    assertEquals(1, pins.size());
    assertTrue(pins.get(0).x() > 5.5 && pins.get(0).x() <= 5.8);
    assertEquals(List.of(), Pins.of(plan(TestRooms.hall(), even(-3))));
  }

  private static void assertInside(Room room, List<Rail> rails) {
    Polygon floor = room.outline().polygon();
    for (Rail rail : rails) {
      assertTrue(floor.covers(line(rail)), "rail " + rail.id());
    }
  }

  private static LineString line(Rail rail) {
    return new GeometryFactory()
        .createLineString(new Coordinate[] {coordinate(rail.from()), coordinate(rail.to())});
  }

  private static Coordinate coordinate(Position p) {
    return new Coordinate(p.x(), p.y());
  }

  private static TiltedDepths even(double millimetres) {
    return TiltedDepths.even(millimetres / 1000);
  }

  private static BayPlan plan(Room room, Depths depths) {
    return BayPlan.of(List.of(room), depths, TestRooms.BUCKETS);
  }
}
