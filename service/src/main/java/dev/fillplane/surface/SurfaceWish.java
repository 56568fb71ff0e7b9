package dev.fillplane.surface;

import java.util.Optional;

/**
 * How the floor between the readings is wanted.
 *
 * @param method how it is interpolated; chosen by {@link FloorFit} unless told
 * @param drift the trend; linear unless told, none where a variogram is given
 * @param variogram a variogram to use untouched; fitted unless told
 * @param nextReadings how many places for one more reading are wanted; 3 unless told
 */
public record SurfaceWish(
    Optional<Method> method, Drift drift, Optional<Variogram> variogram, Integer nextReadings) {

  /** Places for one more reading that are told unasked. */
  public static final int USUAL_NEXT_READINGS = 3;

  /** Fills in what was left out. */
  public SurfaceWish {
    if (drift == null) {
      drift = variogram.isPresent() ? Drift.NONE : Drift.LINEAR;
    }
    nextReadings = nextReadings == null ? USUAL_NEXT_READINGS : nextReadings;
  }

  /** The usual number of next readings. */
  public SurfaceWish(Optional<Method> method, Drift drift, Optional<Variogram> variogram) {
    this(method, drift, variogram, null);
  }

  /** Everything left to the service. */
  public static SurfaceWish usual() {
    return new SurfaceWish(Optional.empty(), null, Optional.empty());
  }
}
