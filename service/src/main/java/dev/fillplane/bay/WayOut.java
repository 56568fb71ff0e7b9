package dev.fillplane.bay;

import dev.fillplane.room.Position;
import java.util.List;

/**
 * How people leave a room.
 *
 * @param room its index in the request
 * @param doorways doorways between it and the exit; 0 for a room with the exit
 * @param distance from the middle of the room through the doorways to the exit
 * @param places where it may be left: its exits, or the one doorway that leads toward an exit
 * @param known whether it leads to an exit that was told
 */
record WayOut(int room, int doorways, double distance, List<Position> places, boolean known) {

  WayOut {
    places = List.copyOf(places);
  }
}
