package dev.fillplane.heat;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.OptionalDouble;

/**
 * What brings the mix to the temperature that is wanted.
 *
 * @param waterTemperature mix water at this temperature does it; left out where none between 5 and
 *     30 C does
 * @param iceMass ice that chills the barrel of mix water to it, taken out before the water is
 *     measured; left out where none is needed
 */
public record Needed(
    @Measured(Dimension.TEMPERATURE) OptionalDouble waterTemperature,
    @Measured(Dimension.MASS) OptionalDouble iceMass) {}
