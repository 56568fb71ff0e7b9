package dev.fillplane.job;

/**
 * A unit as it was sent.
 *
 * @param reference the caller's name of it
 * @param body the request, which nobody writes to
 */
public record UnitRequest(String reference, byte[] body) {}
