package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * A point that does not fit the others.
 *
 * @param point its name
 * @param standardized by how many of its standard deviations it is off
 * @param residual measured elevation minus what the others say
 * @param expected the elevation that the others say
 */
public record Suspect(
    String point,
    double standardized,
    @Measured(Dimension.HEIGHT) double residual,
    @Measured(Dimension.HEIGHT) double expected) {}
