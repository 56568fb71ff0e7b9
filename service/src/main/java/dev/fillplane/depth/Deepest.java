package dev.fillplane.depth;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** Where the pour is deepest. */
public record Deepest(
    @Measured(Dimension.PLAN) double x,
    @Measured(Dimension.PLAN) double y,
    @Measured(Dimension.HEIGHT) double depth) {}
