package dev.fillplane.pour;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one mix makes; times from the start of the work, ages from its first water.
 *
 * @param number its place in the bay, from 1
 * @param bags bags in it; the last one may have fewer
 * @param water mix water for them
 * @param volume what it puts on the floor
 * @param firstRibbon order of the first ribbon that it reaches into
 * @param lastRibbon and of the last
 * @param mixStart when its bags are opened
 * @param firstWater when water meets powder
 * @param ready when it is mixed
 * @param placed when it is on the floor
 * @param rolled when what it covers is spike-rolled
 * @param age its own when it is placed
 * @param edgeAge of the oldest edge that it meets, if it meets one
 * @param clock the times by the clock, if a start is told
 */
public record Batch(
    String bay,
    int number,
    int bags,
    @Measured(Dimension.LIQUID) double water,
    @Measured(Dimension.FILL) double volume,
    int firstRibbon,
    int lastRibbon,
    @Measured(Dimension.TIME) double mixStart,
    @Measured(Dimension.TIME) double firstWater,
    @Measured(Dimension.TIME) double ready,
    @Measured(Dimension.TIME) double placed,
    @Measured(Dimension.TIME) double rolled,
    @Measured(Dimension.TIME) double age,
    @Measured(Dimension.TIME) OptionalDouble edgeAge,
    Optional<BatchClock> clock) {}
