package dev.fillplane.screed;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** A depth pin: its tip stands at the finished height. */
public record Pin(
    @Measured(Dimension.PLAN) double x,
    @Measured(Dimension.PLAN) double y,
    @Measured(Dimension.HEIGHT) double height) {}
