package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * The largest disagreement round a loop of the network, with what is allowed.
 *
 * @param value positive where the loop comes back too high, walked in the order of the setups
 * @param limit the largest that is allowed, by its absolute value
 */
public record Misclosure(
    @Measured(Dimension.HEIGHT) double value, @Measured(Dimension.HEIGHT) double limit) {}
