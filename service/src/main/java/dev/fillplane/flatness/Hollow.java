package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * A connected part of a room that lies too low.
 *
 * @param x of its lowest place
 * @param y of its lowest place
 * @param area to patch
 * @param depth to fill at the lowest place
 * @param volume to fill
 */
public record Hollow(
    @Measured(Dimension.PLAN) double x,
    @Measured(Dimension.PLAN) double y,
    @Measured(Dimension.AREA) double area,
    @Measured(Dimension.HEIGHT) double depth,
    @Measured(Dimension.FILL) double volume) {

  static Hollow of(Hump upsideDown) {
    return new Hollow(
        upsideDown.x(),
        upsideDown.y(),
        upsideDown.area(),
        upsideDown.height(),
        upsideDown.volume());
  }
}
