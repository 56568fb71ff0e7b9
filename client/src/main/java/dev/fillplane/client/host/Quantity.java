package dev.fillplane.client.host;

/**
 * So much of something.
 *
 * @param value how much
 * @param unit its UCUM code, such as {@code {bag}}, {@code L} or {@code h}
 */
public record Quantity(double value, String unit) {}
