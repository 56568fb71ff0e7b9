package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** The largest gap found and what it means. */
public record FloorGap(@Measured(Dimension.HEIGHT) double gap, Passes verdict) {}
