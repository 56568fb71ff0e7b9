package dev.fillplane.surface;

import java.util.Optional;

/**
 * How the floor between the readings was found.
 *
 * @param variogram what was used; left out where three readings give a plane
 * @param crossValidation left out where too few readings leave nothing to compare
 */
public record SurfaceSummary(
    Method method,
    Drift drift,
    Optional<Variogram> variogram,
    Optional<CrossValidation> crossValidation) {}
