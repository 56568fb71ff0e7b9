package dev.fillplane.target;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * A height that must not be passed at a position: the underside of a door, an appliance.
 *
 * @param of whether it is the height of the pour or of the finished covering; of the finish unless
 *     told
 */
public record Ceiling(
    @Measured(Dimension.PLAN) double x,
    @Measured(Dimension.PLAN) double y,
    @Measured(Dimension.HEIGHT) double elevation,
    HeightOf of) {

  /** Fills in what was left out. */
  public Ceiling {
    of = of == null ? HeightOf.FINISH : of;
  }
}
