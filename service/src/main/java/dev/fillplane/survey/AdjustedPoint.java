package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.OptionalDouble;

/**
 * A point after the adjustment.
 *
 * @param point its name
 * @param x where it is on plan, if told
 * @param y where it is on plan, if told
 * @param elevation adjusted elevation
 * @param deviation standard deviation of that elevation; 0 for a benchmark
 * @param residual of its readings the one that is furthest off (measured elevation minus adjusted)
 */
public record AdjustedPoint(
    String point,
    @Measured(Dimension.PLAN) OptionalDouble x,
    @Measured(Dimension.PLAN) OptionalDouble y,
    @Measured(Dimension.HEIGHT) double elevation,
    @Measured(Dimension.HEIGHT) double deviation,
    @Measured(Dimension.HEIGHT) double residual) {}
