package dev.fillplane.estimate;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * Bags that must be on site before a day of pouring.
 *
 * @param day of pouring, from 1, before which it is needed
 * @param units that it is for
 * @param from reference of the first of them
 * @param to reference of the last of them
 * @param bags with those left from deliveries before, enough for the units so far at the confidence
 *     of the order
 * @param pallets full pallets
 * @param looseBags beside the full pallets
 */
public record BagDelivery(
    int day,
    int units,
    String from,
    String to,
    int bags,
    int pallets,
    int looseBags,
    @Measured(Dimension.MASS) double mass) {}
