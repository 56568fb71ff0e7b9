package dev.fillplane.depth;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** Volumes that the pour stays under with a chance of 10, 50 and 90 %, from the survey alone. */
public record VolumeOdds(
    @Measured(Dimension.FILL) double p10,
    @Measured(Dimension.FILL) double p50,
    @Measured(Dimension.FILL) double p90) {}
