package dev.fillplane.job;

/**
 * A request that must not be taken twice.
 *
 * @param key the caller's word for it
 * @param digest tells other requests apart
 */
public record Keyed(String key, String digest) {}
