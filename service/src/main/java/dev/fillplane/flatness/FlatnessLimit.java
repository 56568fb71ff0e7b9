package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * The largest gap allowed under a straightedge.
 *
 * @param straightedge its length
 * @param gap largest gap between two contact points
 * @param source where the figure comes from
 */
public record FlatnessLimit(
    @Measured(Dimension.PLAN) double straightedge,
    @Measured(Dimension.HEIGHT) double gap,
    String source) {

  /** The limit where no covering is told: the usual row for levelled finish floors, under 2 m. */
  public static FlatnessLimit usual() {
    return new FlatnessLimit(
        2, Din18202.limit(4, 2), "DIN 18202 table 3 line 4, between 1 m and 4 m: 5 mm in 2 m");
  }
}
