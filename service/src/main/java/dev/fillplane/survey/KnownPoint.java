package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** A point of the floor whose elevation is measured already. */
public record KnownPoint(
    String point,
    @Measured(Dimension.PLAN) double x,
    @Measured(Dimension.PLAN) double y,
    @Measured(Dimension.HEIGHT) double elevation) {}
