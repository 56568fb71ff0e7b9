package dev.fillplane.heat;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** The temperature that a mix shall have. */
public record Wanted(@Measured(Dimension.TEMPERATURE) double temperature) {}
