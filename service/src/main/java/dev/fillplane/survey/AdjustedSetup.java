package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** The elevation of the laser's plane in one setup. */
public record AdjustedSetup(String id, @Measured(Dimension.HEIGHT) double planeElevation) {}
