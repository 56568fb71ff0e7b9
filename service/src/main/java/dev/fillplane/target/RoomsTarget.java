package dev.fillplane.target;

import java.util.List;

/**
 * The plane of the finished pour in some rooms.
 *
 * @param rooms their numbers
 * @param boundBy what holds the plane there; empty for a given target and where the prices alone
 *     hold it
 */
public record RoomsTarget(List<Integer> rooms, Plane plane, List<Bound> boundBy) {

  /** Copies the lists. */
  public RoomsTarget {
    rooms = List.copyOf(rooms);
    boundBy = List.copyOf(boundBy);
  }
}
