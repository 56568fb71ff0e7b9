package dev.fillplane.room;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** A position in plan coordinates. On the wire it is {@code [x, y]}. */
public record Position(@Measured(Dimension.PLAN) double x, @Measured(Dimension.PLAN) double y) {

  /** The distance on plan to {@code other}. */
  public double distance(Position other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
