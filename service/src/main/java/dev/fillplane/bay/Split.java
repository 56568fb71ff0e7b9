package dev.fillplane.bay;

import dev.fillplane.room.Position;

/**
 * A straight dam that would divide a bay.
 *
 * @param kind where it stands
 * @param from one end, at a wall
 * @param to the other end, at a wall
 */
public record Split(SplitKind kind, Position from, Position to) {

  /** Length of the dam. */
  public double length() {
    return from.distance(to);
  }
}
