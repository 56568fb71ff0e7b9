package dev.fillplane.material;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** Mix water per bag that a sheet allows. */
public record WaterRange(
    @Measured(Dimension.LIQUID) double from, @Measured(Dimension.LIQUID) double to) {}
