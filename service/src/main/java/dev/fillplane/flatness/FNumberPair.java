package dev.fillplane.flatness;

import java.util.OptionalDouble;

/**
 * Flatness and levelness of several lines together.
 *
 * @param ff flatness, where any line tells it
 * @param fl levelness, where any line tells it
 */
public record FNumberPair(OptionalDouble ff, OptionalDouble fl) {}
