package dev.fillplane.bay;

import dev.fillplane.room.Position;
import java.util.List;

/**
 * How people leave a part of the floor.
 *
 * @param part its number
 * @param doorways doorways and joints between it and the exit; 0 for a part with the exit
 * @param distance from the middle of the part through the doorways to the exit
 * @param places where it may be left: its exits, or the one doorway or joint that leads toward one
 * @param known whether it leads to an exit that was told
 */
record WayOut(int part, int doorways, double distance, List<Position> places, boolean known) {

  WayOut {
    places = List.copyOf(places);
  }
}
