package dev.fillplane.surface;

import java.util.List;
import java.util.Optional;

/**
 * How the floor between the readings is wanted.
 *
 * @param method how it is interpolated; chosen by {@link FloorFit} unless told
 * @param drift the trend; linear unless told, none where a variogram is given
 * @param variogram a variogram to use untouched; fitted unless told
 * @param nextReadings how many places for one more reading are wanted; 3 unless told
 * @param steps lines across which the floor may jump; none unless told
 */
public record SurfaceWish(
    Optional<Method> method,
    Drift drift,
    Optional<Variogram> variogram,
    Integer nextReadings,
    List<Step> steps) {

  /** Places for one more reading that are told unasked. */
  public static final int USUAL_NEXT_READINGS = 3;

  /** Fills in what was left out. */
  public SurfaceWish {
    if (drift == null) {
      drift = variogram.isPresent() ? Drift.NONE : Drift.LINEAR;
    }
    nextReadings = nextReadings == null ? USUAL_NEXT_READINGS : nextReadings;
    steps = steps == null ? List.of() : List.copyOf(steps);
  }

  /** No step, and the usual number of next readings. */
  public SurfaceWish(Optional<Method> method, Drift drift, Optional<Variogram> variogram) {
    this(method, drift, variogram, null, null);
  }

  /** Everything left to the service. */
  public static SurfaceWish usual() {
    return new SurfaceWish(Optional.empty(), null, Optional.empty());
  }

  /** The same with other steps. */
  public SurfaceWish with(List<Step> others) {
    return new SurfaceWish(method, drift, variogram, nextReadings, others);
  }
}
