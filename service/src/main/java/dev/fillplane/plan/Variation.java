package dev.fillplane.plan;

/**
 * A request that is compared with another.
 *
 * @param name the caller's
 */
public record Variation(String name, PlanRequest request) {}
