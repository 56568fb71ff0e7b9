package dev.fillplane.surface;

import dev.fillplane.room.Position;

/**
 * A line across which the floor may jump, such as the edge of a slab.
 *
 * @param from one point of it
 * @param to another
 */
public record Step(Position from, Position to) {

  /** Its length on plan. */
  public double length() {
    return from.distance(to);
  }
}
