package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;

/** A point whose elevation is known and held. */
public record Benchmark(String point, @Measured(Dimension.HEIGHT) double elevation) {}
