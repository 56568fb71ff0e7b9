package dev.fillplane.surface;

import java.util.Optional;

/**
 * How the floor between the readings is wanted.
 *
 * @param method how it is interpolated; chosen by {@link FloorFit} unless told
 * @param drift the trend; linear unless told, none where a variogram is given
 * @param variogram a variogram to use untouched; fitted unless told
 */
public record SurfaceWish(Optional<Method> method, Drift drift, Optional<Variogram> variogram) {

  /** Fills in what was left out. */
  public SurfaceWish {
    if (drift == null) {
      drift = variogram.isPresent() ? Drift.NONE : Drift.LINEAR;
    }
  }

  /** Everything left to the service. */
  public static SurfaceWish usual() {
    return new SurfaceWish(Optional.empty(), null, Optional.empty());
  }
}
