package dev.fillplane.safety;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * Where the hands are at one end of a lift.
 *
 * @param horizontal from the middle between the ankles to the hands; not negative
 * @param vertical height of the hands above the floor; not negative
 * @param asymmetry how far the body is twisted, either way; not negative
 */
public record HandPosition(
    @Measured(Dimension.HEIGHT) double horizontal,
    @Measured(Dimension.HEIGHT) double vertical,
    @Measured(Dimension.ANGLE) double asymmetry) {

  /** Refuses what is no position. */
  public HandPosition {
    if (!(horizontal >= 0 && vertical >= 0 && asymmetry >= 0)) {
      throw new IllegalArgumentException(horizontal + ", " + vertical + ", " + asymmetry);
    }
  }
}
