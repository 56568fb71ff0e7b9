package dev.fillplane.flatness;

/**
 * A flatness or levelness number and what it rests on.
 *
 * @param value the number, larger is flatter; at most {@link FNumbers#MOST}
 * @param count of the curvatures or differences of height behind it
 */
public record FNumber(double value, int count) {}
