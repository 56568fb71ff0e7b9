package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.OptionalDouble;

/**
 * The distance from the plane of the laser down to a point; larger is lower.
 *
 * @param point name of the point, the same in every setup that reads it
 * @param x where it is on plan; may be left out for a benchmark or a turning point off the floor
 * @param y where it is on plan; given with x
 * @param reading the distance
 */
public record Reading(
    String point,
    @Measured(Dimension.PLAN) OptionalDouble x,
    @Measured(Dimension.PLAN) OptionalDouble y,
    @Measured(Dimension.HEIGHT) double reading) {}
