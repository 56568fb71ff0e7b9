package dev.fillplane.safety;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * Where the hands are at one end of a lift.
 *
 * @param horizontal from the middle between the ankles to the hands; not negative
 * @param vertical height of the hands above the floor; not negative
 * @param asymmetry how far the body is twisted, either way; not negative, 0 unless told
 */
public record HandPosition(
    @Measured(Dimension.HEIGHT) double horizontal,
    @Measured(Dimension.HEIGHT) double vertical,
    @Measured(Dimension.ANGLE) Double asymmetry) {

  /** Fills in what was left out and refuses what is no position. */
  public HandPosition {
    asymmetry = asymmetry == null ? 0.0 : asymmetry;
    if (!(horizontal >= 0 && vertical >= 0 && asymmetry >= 0)) {
      throw new IllegalArgumentException(horizontal + ", " + vertical + ", " + asymmetry);
    }
  }
}
