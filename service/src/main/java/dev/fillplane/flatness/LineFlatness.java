package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.OptionalDouble;

/**
 * How flat a measured line is.
 *
 * @param id of the line
 * @param ff flatness, where it applies
 * @param fl levelness, where it applies
 * @param gap largest under the edge
 * @param at its lowest place, from the first reading; missing where there is no gap
 */
public record LineFlatness(
    String id,
    OptionalDouble ff,
    OptionalDouble fl,
    @Measured(Dimension.HEIGHT) double gap,
    @Measured(Dimension.PLAN) OptionalDouble at) {}
