package dev.fillplane.target;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * A height that the target has to meet at a position: a threshold, a stair, a finish that is there.
 *
 * @param of whether it is the height of the pour or of the finished covering; of the finish unless
 *     told
 * @param tolerance by how much it may be missed, up or down; 1 mm unless told
 */
public record FixedHeight(
    @Measured(Dimension.PLAN) double x,
    @Measured(Dimension.PLAN) double y,
    @Measured(Dimension.HEIGHT) double elevation,
    HeightOf of,
    @Measured(Dimension.HEIGHT) Double tolerance) {

  /** What a foot does not notice and a pour can be placed to; our choice. */
  public static final double DEFAULT_TOLERANCE = 0.001;

  /** Fills in what was left out. */
  public FixedHeight {
    of = of == null ? HeightOf.FINISH : of;
    tolerance = tolerance == null ? DEFAULT_TOLERANCE : tolerance;
  }
}
