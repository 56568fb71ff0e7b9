package dev.fillplane.heat;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * The fresh mix under the conditions told.
 *
 * @param mixTemperature temperature as it leaves the mixer
 * @param workingTime time from water on powder until it no longer flows together, on this floor at
 *     the mean depth
 * @param healingTime the same until a cut edge no longer closes
 * @param waterPerBatch mix water for one batch
 * @param needed what brings the mix to the temperature of the sheet
 */
public record Mix(
    @Measured(Dimension.TEMPERATURE) double mixTemperature,
    @Measured(Dimension.TIME) double workingTime,
    @Measured(Dimension.TIME) double healingTime,
    @Measured(Dimension.LIQUID) double waterPerBatch,
    Needed needed) {}
