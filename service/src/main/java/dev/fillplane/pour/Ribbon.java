package dev.fillplane.pour;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.room.Outline;

/**
 * One strip of a bay, poured side by side with the last.
 *
 * @param order its place in the pour of the whole floor, from 1
 * @param volume what is poured in it
 * @param batches batches that reach into it
 * @param start when its first batch is placed, from the start of the work
 * @param end when its last batch is placed
 * @param edgeAge age from first water of the oldest part of its edges when it is met: of its front
 *     by later ribbons, of the joins between its own batches; 0 where nothing meets it
 */
public record Ribbon(
    int order,
    Outline outline,
    @Measured(Dimension.FILL) double volume,
    @Measured(Dimension.HEIGHT) double meanDepth,
    int batches,
    @Measured(Dimension.TIME) double start,
    @Measured(Dimension.TIME) double end,
    @Measured(Dimension.TIME) double edgeAge) {}
