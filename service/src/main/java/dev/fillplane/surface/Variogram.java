package dev.fillplane.surface;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * How the difference of two elevations grows with their distance.
 *
 * @param shape the model
 * @param nugget variance of a reading; not negative
 * @param sill variance of the floor, above the nugget; not negative
 * @param range the length in the model's formula; positive
 */
public record Variogram(
    VariogramShape shape,
    @Measured(Dimension.HEIGHT_VARIANCE) double nugget,
    @Measured(Dimension.HEIGHT_VARIANCE) double sill,
    @Measured(Dimension.PLAN) double range) {}
