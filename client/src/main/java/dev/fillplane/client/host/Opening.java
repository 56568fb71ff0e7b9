package dev.fillplane.client.host;

import java.util.Optional;

/**
 * A gap in the walls of a room. Without an exit nobody knows where the crew ends its pour.
 *
 * @param id its name
 * @param from one end, on the outline
 * @param to the other end
 * @param into the room behind it; empty for a way out
 */
public record Opening(String id, Corner from, Corner to, Optional<String> into) {

  /** A way out of the unit. */
  public static Opening exit(String id, Corner from, Corner to) {
    return new Opening(id, from, to, Optional.empty());
  }

  /** A doorway into another room. */
  public static Opening doorway(String id, Corner from, Corner to, String into) {
    return new Opening(id, from, to, Optional.of(into));
  }
}
