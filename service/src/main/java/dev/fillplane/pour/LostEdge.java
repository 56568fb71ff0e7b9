package dev.fillplane.pour;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * Where and when a pour is lost: the first edge that closes no more before it is met, or the first
 * batch that is stiff before it is placed. Times count from the start of the work.
 *
 * @param bay where it lies
 * @param ribbon order of its ribbon
 * @param batch number in its bay of the batch that comes too late
 * @param at when it heals no more
 * @param met when that batch is placed
 */
public record LostEdge(
    String bay,
    int ribbon,
    int batch,
    @Measured(Dimension.TIME) double at,
    @Measured(Dimension.TIME) double met) {}
