package dev.fillplane.supply;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** A board across an opening that keeps the pour in. */
public record Dam(
    String room,
    String opening,
    @Measured(Dimension.PLAN) double length,
    @Measured(Dimension.HEIGHT) double height) {}
