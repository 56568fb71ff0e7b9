package dev.fillplane.supply;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** One layer of the pour, from the bottom. */
public record Lift(
    int number,
    @Measured(Dimension.AREA) double area,
    @Measured(Dimension.FILL) double volume,
    @Measured(Dimension.HEIGHT) double maximumDepth) {}
