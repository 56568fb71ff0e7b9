package dev.fillplane.depth;

/**
 * How deep the pour is in a room.
 *
 * @param minimum smallest depth; negative where the floor stands above the target
 * @param maximum largest depth
 */
public record DepthRange(double minimum, double maximum) {}
