package dev.fillplane.depth;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** A place where the caller wants numbers. */
public record ProbeWish(
    String id, @Measured(Dimension.PLAN) double x, @Measured(Dimension.PLAN) double y) {}
