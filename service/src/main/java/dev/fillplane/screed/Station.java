package dev.fillplane.screed;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * Where the height of a rail is set.
 *
 * @param at distance along the rail
 * @param height top of the rail above the floor
 * @param shim height to pack under a rail of the rip width
 */
public record Station(
    @Measured(Dimension.PLAN) double at,
    @Measured(Dimension.HEIGHT) double height,
    @Measured(Dimension.HEIGHT) double shim) {}
