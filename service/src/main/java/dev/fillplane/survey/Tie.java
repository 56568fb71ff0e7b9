package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/**
 * How two setups agree on the points that both read, after the adjustment.
 *
 * @param from the earlier setup of the request
 * @param to the later one
 * @param points how many points both read
 * @param difference mean over these points of what {@code to} makes of their elevation less what
 *     {@code from} makes of it
 */
public record Tie(
    String from, String to, int points, @Measured(Dimension.HEIGHT) double difference) {}
