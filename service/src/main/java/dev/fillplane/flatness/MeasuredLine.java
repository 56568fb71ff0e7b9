package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * A straight line over a floor, read at even distances.
 *
 * @param id the caller's name of the line
 * @param spacing between the readings; positive
 * @param elevations of the readings in their order, 3 or more
 */
public record MeasuredLine(
    String id,
    @Measured(Dimension.PLAN) double spacing,
    @Measured(Dimension.HEIGHT) double[] elevations) {}
