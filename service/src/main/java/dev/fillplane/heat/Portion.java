package dev.fillplane.heat;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** A part of a mix before it is mixed. */
public record Portion(
    @Measured(Dimension.MASS) double mass, @Measured(Dimension.TEMPERATURE) double temperature) {

  /** None of it. */
  public static Portion none() {
    return new Portion(0, 0);
  }
}
