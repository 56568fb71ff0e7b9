package dev.fillplane.estimate;

import java.math.BigDecimal;

/**
 * A price that holds for the whole quantity once it is large enough.
 *
 * @param from least quantity, in the unit of the price
 * @param price for one unit
 */
public record PriceBreak(double from, BigDecimal price) {}
