package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** The largest disagreement round a loop of the network, with what is allowed. */
public record Misclosure(
    @Measured(Dimension.HEIGHT) double value, @Measured(Dimension.HEIGHT) double limit) {}
