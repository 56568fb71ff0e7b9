package dev.fillplane.depth;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.OptionalDouble;

/** How fine the depths are given; {@code cell} is the side of a square cell. */
public record GridWish(@Measured(Dimension.PLAN) OptionalDouble cell) {}
