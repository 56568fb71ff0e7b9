package dev.fillplane.depth;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * The numbers at a place, from the surface itself.
 *
 * @param depth target minus floor; negative where the floor is higher
 */
public record Probe(
    String id,
    @Measured(Dimension.HEIGHT) double elevation,
    @Measured(Dimension.HEIGHT) double deviation,
    @Measured(Dimension.HEIGHT) double depth) {}
