package dev.fillplane.supply;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** What one room takes; the bags are the likely ones, rounded up. */
public record RoomQuantity(
    String room,
    @Measured(Dimension.AREA) double area,
    @Measured(Dimension.FILL) double volume,
    @Measured(Dimension.HEIGHT) double meanDepth,
    int bags) {}
