package dev.fillplane.room;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A way from one room to another.
 *
 * @param to the number of the room that it leads to
 * @param place the middle of the opening
 */
public record Doorway(int to, Position place) {

  /** The doorways of each room, in the order in which they are told; each leads both ways. */
  public static List<List<Doorway>> of(List<Room> rooms) {
    Map<String, Integer> byId = new LinkedHashMap<>();
    List<List<Doorway>> doorways = new ArrayList<>();
    for (Room room : rooms) {
      byId.put(room.id(), byId.size());
      doorways.add(new ArrayList<>());
    }
    for (int i = 0; i < rooms.size(); i++) {
      for (Opening opening : rooms.get(i).openings()) {
        Integer other = opening.into().map(byId::get).orElse(null);
        if (opening.kind() == OpeningKind.DOORWAY && other != null && other != i) {
          doorways.get(i).add(new Doorway(other, opening.middle()));
          doorways.get(other).add(new Doorway(i, opening.middle()));
        }
      }
    }
    return doorways;
  }
}
