package dev.fillplane.depth;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** Where the floor is highest. */
public record Highest(
    @Measured(Dimension.PLAN) double x,
    @Measured(Dimension.PLAN) double y,
    @Measured(Dimension.HEIGHT) double elevation) {}
