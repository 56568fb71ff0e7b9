package dev.fillplane.surface;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * A place where one more reading would help.
 *
 * @param saves bags of reserve that it would save, in fractions, on top of the places before it
 */
public record NextReading(
    @Measured(Dimension.PLAN) double x, @Measured(Dimension.PLAN) double y, double saves) {}
