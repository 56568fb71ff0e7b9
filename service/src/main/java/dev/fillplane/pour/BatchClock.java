package dev.fillplane.pour;

/**
 * A batch by the clock, as HH:MM.
 *
 * @param mixStart when its bags are opened
 * @param ready when it is mixed
 * @param placed when it is on the floor
 */
public record BatchClock(String mixStart, String ready, String placed) {}
