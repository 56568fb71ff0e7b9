package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.room.Position;

/**
 * The largest gap of a floor and where the straightedge lies there.
 *
 * @param gap under the edge
 * @param at the place of the gap
 * @param from one contact of the edge
 * @param to the other contact
 */
public record Gap(
    @Measured(Dimension.HEIGHT) double gap, Position at, Position from, Position to) {}
