package dev.fillplane.material;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * A working time that a sheet states, and the temperature at which it holds.
 *
 * @param workingTime time from water on powder until the mix no longer flows together
 */
public record StatedTime(
    @Measured(Dimension.TIME) double workingTime,
    @Measured(Dimension.TEMPERATURE) double workingTimeAt) {}
