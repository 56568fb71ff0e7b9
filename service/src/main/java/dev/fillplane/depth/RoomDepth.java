package dev.fillplane.depth;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * What is poured in one room.
 *
 * @param volume volume below the target and above the floor, of the mean surface
 * @param volumeOdds the same with its uncertainty
 */
public record RoomDepth(
    String room, @Measured(Dimension.FILL) double volume, VolumeOdds volumeOdds) {}
