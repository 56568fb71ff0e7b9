package dev.fillplane.pour;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * What one mix makes.
 *
 * @param number its place in the bay, from 1
 * @param bags bags in it; the last one may have fewer
 * @param firstWater when water meets powder, from the first water of the bay
 * @param placed when it is on the floor
 */
public record Batch(
    String bay,
    int number,
    int bags,
    @Measured(Dimension.TIME) double firstWater,
    @Measured(Dimension.TIME) double placed) {}
