package dev.fillplane.supply;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * What the bow of the joists under the wet pour takes; part of all numbers of bags.
 *
 * @param share of the bow in what is poured, as a part of the volume over a stiff floor
 * @param volume that it takes, of the mean surface
 * @param bags of the order that are there for it
 */
public record JoistBow(double share, @Measured(Dimension.FILL) double volume, int bags) {}
