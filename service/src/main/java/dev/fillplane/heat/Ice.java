package dev.fillplane.heat;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** Ice in a mix, at its melting point. */
public record Ice(@Measured(Dimension.MASS) double mass) {}
