package dev.fillplane.pour;

/**
 * Mix water that could be had, and what it would do.
 *
 * @param temperature of the water
 * @param healingTime with it
 */
public record CoolerWater(double temperature, double healingTime) {}
