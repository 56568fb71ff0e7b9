package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.OptionalDouble;

/**
 * The plane of the laser in one setup.
 *
 * @param id name of the setup
 * @param planeElevation elevation of the plane where the laser stands
 * @param x where that is: as told, else the centroid of the readings; if any place is told
 * @param y where that is
 * @param tiltX rise of the plane along x, where a tilt is looked for
 * @param tiltY rise of the plane along y
 * @param tiltDeviation standard deviation of the less certain of the two
 */
public record AdjustedSetup(
    String id,
    @Measured(Dimension.HEIGHT) double planeElevation,
    @Measured(Dimension.PLAN) OptionalDouble x,
    @Measured(Dimension.PLAN) OptionalDouble y,
    @Measured(Dimension.SLOPE) OptionalDouble tiltX,
    @Measured(Dimension.SLOPE) OptionalDouble tiltY,
    @Measured(Dimension.SLOPE) OptionalDouble tiltDeviation) {}
