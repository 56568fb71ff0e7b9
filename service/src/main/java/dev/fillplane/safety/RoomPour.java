package dev.fillplane.safety;

import dev.fillplane.depth.DepthRange;
import dev.fillplane.depth.Fill;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;

/**
 * What is poured in a room.
 *
 * @param room with what is known of its base
 * @param fill area and volume of the pour
 * @param depths smallest and largest
 */
public record RoomPour(Room room, Fill fill, DepthRange depths) {

  /** Of all rooms; the lists go side by side. */
  public static List<RoomPour> of(List<Room> rooms, List<Fill> fills, List<DepthRange> depths) {
    List<RoomPour> pours = new ArrayList<>();
    for (int i = 0; i < rooms.size(); i++) {
      pours.add(new RoomPour(rooms.get(i), fills.get(i), depths.get(i)));
    }
    return pours;
  }

  boolean isPoured() {
    return fill.volume() > 0;
  }
}
