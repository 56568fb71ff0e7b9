package dev.fillplane.material;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** Temperatures of air, slab and mix between which a sheet allows the work. */
public record TemperatureRange(
    @Measured(Dimension.TEMPERATURE) double from, @Measured(Dimension.TEMPERATURE) double to) {}
