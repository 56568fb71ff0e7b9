package dev.fillplane.room;

import java.util.Optional;

/**
 * A gap in the wall of a room.
 *
 * @param id its name
 * @param from one end, on the outline
 * @param to the other end, on the outline
 * @param kind what it is
 * @param into the room on its other side, for a doorway
 */
public record Opening(
    String id, Position from, Position to, OpeningKind kind, Optional<String> into) {

  /** Its width on plan. */
  public double width() {
    return from.distance(to);
  }

  /** Half way between its ends. */
  public Position middle() {
    return new Position((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
  }
}
