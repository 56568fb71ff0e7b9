package dev.fillplane.flatness;

/**
 * F-numbers held against a class of floors.
 *
 * @param asked what the class asks for
 * @param verdict unclear where one of the numbers is missing or does not stand for its section
 */
public record FNumberCheck(FNumberClass asked, Passes verdict) {}
