package dev.fillplane.safety;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * How much quartz dust people may breathe.
 *
 * @param jurisdiction where it holds
 * @param kind how binding it is
 * @param concentration of respirable crystalline silica, as a mean
 * @param hours of the mean
 * @param basis where it stands
 */
public record ExposureLimit(
    Jurisdiction jurisdiction,
    LimitKind kind,
    @Measured(Dimension.CONCENTRATION) double concentration,
    double hours,
    String basis) {}
