package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.room.Outline;

/**
 * A connected part of a room that stands too high.
 *
 * @param x of its top
 * @param y of its top
 * @param outline of the part on plan, within about 2 cm
 * @param area to grind
 * @param height to grind off at the top
 * @param volume to grind off
 */
public record Hump(
    @Measured(Dimension.PLAN) double x,
    @Measured(Dimension.PLAN) double y,
    Outline outline,
    @Measured(Dimension.AREA) double area,
    @Measured(Dimension.HEIGHT) double height,
    @Measured(Dimension.FILL) double volume) {}
