package dev.fillplane.screed;

/**
 * A line that rails lie on.
 *
 * @param across where it lies across the travel
 * @param support what its rails stand by
 */
record RailLine(double across, RailSupport support) {}
