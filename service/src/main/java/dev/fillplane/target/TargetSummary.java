package dev.fillplane.target;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;

/**
 * The plane of the finished pour.
 *
 * @param elevation elevation at the plan origin
 * @param boundBy what holds it there; empty for a given target
 * @param bareOdds chance that the floor shows through it somewhere
 * @param guardHeight height that the target would have to be raised by, so that the floor stays
 *     covered everywhere with the chance that was asked
 */
public record TargetSummary(
    TargetShape shape,
    @Measured(Dimension.HEIGHT) double elevation,
    @Measured(Dimension.SLOPE) double slopeX,
    @Measured(Dimension.SLOPE) double slopeY,
    List<Bound> boundBy,
    double bareOdds,
    @Measured(Dimension.HEIGHT) double guardHeight) {

  /** Copies the bounds. */
  public TargetSummary {
    boundBy = List.copyOf(boundBy);
  }
}
