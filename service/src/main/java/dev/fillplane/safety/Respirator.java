package dev.fillplane.safety;

/**
 * A respirator that has to be worn.
 *
 * @param apf its assigned protection factor: how many times cleaner the air inside is, at least
 */
public record Respirator(int apf) {}
