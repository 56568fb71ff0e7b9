package dev.fillplane.plan;

import dev.fillplane.room.Floorplan;
import dev.fillplane.room.Room;
import dev.fillplane.surface.Spots;
import java.util.List;

/**
 * Whether readings can show the gap under a short edge. Three readings must lie under it, two for
 * the contacts and one between: it must be twice as long as the readings are apart, where each
 * stands for a square of the floor of its room. For edges under 1 m (own rule); longer ones see a
 * floor by the deviation of its surface.
 */
final class ShortEdges {

  private static final double SHORT = 1;

  private ShortEdges() {}

  static boolean areSeen(double edge, Spots spots, List<Room> rooms) {
    if (edge >= SHORT) {
      return true;
    }
    Floorplan floorplan = new Floorplan(rooms);
    int[] count = new int[rooms.size()];
    for (int i = 0; i < spots.count(); i++) {
      floorplan.roomAt(spots.x()[i], spots.y()[i]).ifPresent(room -> count[room]++);
    }
    for (int room = 0; room < count.length; room++) {
      double area = rooms.get(room).outline().polygon().getArea();
      if (4 * area > edge * edge * count[room]) {
        return false;
      }
    }
    return true;
  }
}
