package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * The largest gap allowed under a straightedge.
 *
 * @param straightedge its length
 * @param gap largest gap between two contact points
 * @param source where the figure comes from
 */
public record FlatnessLimit(
    @Measured(Dimension.PLAN) double straightedge,
    @Measured(Dimension.HEIGHT) double gap,
    String source) {}
