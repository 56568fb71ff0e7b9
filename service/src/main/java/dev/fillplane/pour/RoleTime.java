package dev.fillplane.pour;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * How long people did one kind of work, without waiting.
 *
 * @param busy summed over all of them
 */
public record RoleTime(Role role, @Measured(Dimension.TIME) double busy) {}
