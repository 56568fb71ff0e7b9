package dev.fillplane.bay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;
import org.junit.jupiter.api.Test;

class TowardTest {

  /** 2 m long and 12 m wide: a plan of its own choice would not go this way. */
  @Test
  void travelIsAsTold() {
    Room wide =
        TestRooms.room("wide", TestRooms.rectangle(0, 0, 2, 12), TestRooms.exit(2, 5, 2, 7));
    Position end = new Position(2, 6);
    Bay bay = toward(wide, new Position(0, 6), end).bays().get(0);
    assertEquals(12, bay.longestFront(), 1e-6);
    assertEquals(end, bay.wayOut());
    assertEquals(24, bay.fill().area(), 1e-6);
    List<Strip> strips = bay.strips();
    assertTrue(strips.size() >= 5, strips.size() + " strips");
    for (int i = 1; i < strips.size(); i++) {
      assertTrue(middle(strips.get(i)) > middle(strips.get(i - 1)), "toward the way out");
    }
    Bay free = BayPlan.of(List.of(wide), TiltedDepths.even(0.01), TestRooms.BUCKETS).bays().get(0);
    assertTrue(free.longestFront() < 12);
  }

  @Test
  void canBeTheOtherWay() {
    Room wide = TestRooms.room("wide", TestRooms.rectangle(0, 0, 2, 12));
    List<Strip> strips =
        toward(wide, new Position(2, 6), new Position(0, 6)).bays().get(0).strips();
    assertTrue(middle(strips.get(0)) > middle(strips.get(strips.size() - 1)));
  }

  private static BayPlan toward(Room room, Position from, Position to) {
    return BayPlan.toward(room, from, to, TiltedDepths.even(0.01), TestRooms.BUCKETS);
  }

  private static double middle(Strip strip) {
    return strip.outline().polygon().getCentroid().getX();
  }
}
