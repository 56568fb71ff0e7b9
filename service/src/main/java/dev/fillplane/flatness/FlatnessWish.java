package dev.fillplane.flatness;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How flat a floor is wanted: by the id of a tolerance, or by straightedge and gap.
 *
 * @param id of a tolerance
 * @param straightedge length of the edge of {@code gap}
 * @param gap largest that is allowed
 */
public record FlatnessWish(
    Optional<String> id,
    @Measured(Dimension.PLAN) OptionalDouble straightedge,
    @Measured(Dimension.HEIGHT) OptionalDouble gap) {}
