package dev.fillplane.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.fillplane.depth.DepthRange;
import dev.fillplane.depth.Fill;
import dev.fillplane.quantity.Load;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class PouredRoomsTest {

  private static final double DENSITY = 2000;

  /** 15 mm of 2000 kg/m3 weigh 30 kg/m2, 5 mm weigh 10. */
  @Test
  void aSmallDeepRoomIsNotHiddenByALargeThinOne() {
    PouredRooms wood =
        new PouredRooms(List.of(room("hall", 40, 0.005), room("bath", 4, 0.015)), DENSITY);
    assertFalse(Load.isOver(wood.load(), Load.ofMassPerArea(20)));
    assertEquals(List.of("bath"), wood.over(Load.ofMassPerArea(20)).names());
  }

  private static RoomPour room(String id, double area, double depth) {
    Room room =
        new Room(
            id,
            new Outline(List.of()),
            Optional.of(Substrate.WOOD),
            null,
            OptionalInt.of(2015),
            null);
    return new RoomPour(room, new Fill(area, area * depth), new DepthRange(depth, depth));
  }
}
