package dev.fillplane.supply;

/**
 * How much of the variance of the bags comes from one source.
 *
 * @param share of the sum over all sources, 0 to 1
 */
public record Driver(DriverSource source, double share) {}
