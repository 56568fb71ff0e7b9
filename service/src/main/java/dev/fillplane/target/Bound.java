package dev.fillplane.target;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.Optional;

/**
 * What holds the target where it is.
 *
 * @param point the reading that binds, if it is one
 */
public record Bound(
    BoundKind kind,
    Optional<String> point,
    @Measured(Dimension.PLAN) double x,
    @Measured(Dimension.PLAN) double y) {}
