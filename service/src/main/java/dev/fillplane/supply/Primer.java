package dev.fillplane.supply;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** Primer as bought, undiluted, and the most coats any room wants. */
public record Primer(@Measured(Dimension.LIQUID) double liquid, int coats) {}
