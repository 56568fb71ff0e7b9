package dev.fillplane.surface;

import java.util.List;
import java.util.Optional;

/**
 * How the floor between the readings was found.
 *
 * @param variogram what was used; left out where three readings give a plane
 * @param crossValidation left out where too few readings leave nothing to compare
 * @param nextReadings where one more reading would help most, the best first
 * @param deviations how unsure the floor is where; left out where it was not worked out
 */
public record SurfaceSummary(
    Method method,
    Drift drift,
    Optional<Variogram> variogram,
    Optional<CrossValidation> crossValidation,
    List<NextReading> nextReadings,
    Optional<Deviations> deviations) {

  /** Copies the list. */
  public SurfaceSummary {
    nextReadings = List.copyOf(nextReadings);
  }

  /** Nothing said of more readings. */
  public SurfaceSummary(
      Method method,
      Drift drift,
      Optional<Variogram> variogram,
      Optional<CrossValidation> crossValidation) {
    this(method, drift, variogram, crossValidation, List.of(), Optional.empty());
  }

  /** The same with what is said of more readings. */
  public SurfaceSummary with(List<NextReading> next, Deviations where) {
    return new SurfaceSummary(method, drift, variogram, crossValidation, next, Optional.of(where));
  }
}
