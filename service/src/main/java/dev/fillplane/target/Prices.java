package dev.fillplane.target;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.Optional;

/**
 * What filling and grinding cost, per volume. On the wire they are decimal strings.
 *
 * @param currency code of ISO 4217, if told
 * @param fill of underlayment in place
 * @param grind of floor ground off
 */
public record Prices(
    Optional<String> currency,
    @Measured(Dimension.FILL_PRICE) double fill,
    @Measured(Dimension.FILL_PRICE) double grind) {}
