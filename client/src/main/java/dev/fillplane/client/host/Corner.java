package dev.fillplane.client.host;

/**
 * A place on plan, by a local grid of the host.
 *
 * @param x to the right, metres or feet
 * @param y up, metres or feet
 */
public record Corner(double x, double y) {}
