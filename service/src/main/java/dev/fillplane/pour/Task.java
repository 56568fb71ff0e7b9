package dev.fillplane.pour;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.OptionalInt;

/**
 * A piece of work of one person; times from the start of the work.
 *
 * @param role what is done
 * @param batch the batch that it is done for, as its place among all batches, from 1; none for
 *     washing up
 * @param from when it begins
 * @param to when it is done; of a bucket with the way back
 */
public record Task(
    Role role,
    OptionalInt batch,
    @Measured(Dimension.TIME) double from,
    @Measured(Dimension.TIME) double to) {}
