package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.room.Outline;
import java.util.OptionalInt;

/**
 * A connected part of a room that lies too low.
 *
 * @param x of its lowest place
 * @param y of its lowest place
 * @param outline of the part on plan, within about 2 cm
 * @param area to patch
 * @param depth to fill at the lowest place
 * @param volume to fill
 * @param bags that it takes by itself, rounded up, where the material is known
 */
public record Hollow(
    @Measured(Dimension.PLAN) double x,
    @Measured(Dimension.PLAN) double y,
    Outline outline,
    @Measured(Dimension.AREA) double area,
    @Measured(Dimension.HEIGHT) double depth,
    @Measured(Dimension.FILL) double volume,
    OptionalInt bags) {

  static Hollow of(Hump upsideDown) {
    return new Hollow(
        upsideDown.x(),
        upsideDown.y(),
        upsideDown.outline(),
        upsideDown.area(),
        upsideDown.height(),
        upsideDown.volume(),
        OptionalInt.empty());
  }

  /** The same with its bags counted. */
  public Hollow with(int counted) {
    return new Hollow(x, y, outline, area, depth, volume, OptionalInt.of(counted));
  }
}
