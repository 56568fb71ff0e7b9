package dev.fillplane.client.host;

import java.util.List;

/**
 * A room to be poured.
 *
 * @param id its name
 * @param corners its outline, counter-clockwise or clockwise; the first is not repeated
 * @param openings ways out and doorways
 */
public record Room(String id, List<Corner> corners, List<Opening> openings) {

  /** Copies the lists. */
  public Room {
    corners = List.copyOf(corners);
    openings = List.copyOf(openings);
  }

  /** A rectangle from the origin. */
  public static Room rectangle(String id, double width, double depth, Opening... openings) {
    List<Corner> corners =
        List.of(
            new Corner(0, 0), new Corner(width, 0), new Corner(width, depth), new Corner(0, depth));
    return new Room(id, corners, List.of(openings));
  }
}
