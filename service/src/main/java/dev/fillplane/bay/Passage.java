package dev.fillplane.bay;

import dev.fillplane.room.Position;
import java.util.List;

/**
 * A way from one part of the floor to another: a doorway, or across a joint.
 *
 * @param to the number of the part that it leads to
 * @param places where it may be walked
 */
record Passage(int to, List<Position> places) {

  Passage {
    places = List.copyOf(places);
  }
}
