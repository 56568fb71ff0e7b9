package dev.fillplane.depth;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.room.Outline;

/**
 * A connected part of the floor to grind.
 *
 * @param x of its highest place over what it is ground to
 * @param y of that place
 * @param outline as it can be chalked on the floor, within 2 cm
 * @param area to grind
 * @param height to grind off at the highest place
 * @param volume to grind off
 */
public record GroundArea(
    @Measured(Dimension.PLAN) double x,
    @Measured(Dimension.PLAN) double y,
    Outline outline,
    @Measured(Dimension.AREA) double area,
    @Measured(Dimension.HEIGHT) double height,
    @Measured(Dimension.FILL) double volume) {}
