package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * The largest gap along one measured line.
 *
 * @param gap under the straightedge; 0 where it never stands hollow, all three places then the same
 * @param from index of one contact
 * @param at index of the lowest sample under the edge
 * @param to index of the other contact
 */
public record ProfileGap(@Measured(Dimension.HEIGHT) double gap, int from, int at, int to) {}
