package dev.fillplane.surface;

import java.util.List;
import java.util.Optional;

/**
 * How the floor between the readings is wanted.
 *
 * @param method how it is interpolated; kriging unless told
 * @param drift the trend; linear unless told, none where a variogram is given
 * @param variogram a variogram to use untouched; fitted unless told
 * @param steps lines across which the floor may jump; none unless told
 */
public record SurfaceWish(
    Method method, Drift drift, Optional<Variogram> variogram, List<Step> steps) {

  /** Fills in what was left out. */
  public SurfaceWish {
    steps = steps == null ? List.of() : List.copyOf(steps);
    method = method == null ? Method.KRIGING : method;
    if (drift == null) {
      drift = variogram.isPresent() ? Drift.NONE : Drift.LINEAR;
    }
  }

  /** Everything left to the service. */
  public static SurfaceWish usual() {
    return new SurfaceWish(null, null, Optional.empty(), null);
  }
}
