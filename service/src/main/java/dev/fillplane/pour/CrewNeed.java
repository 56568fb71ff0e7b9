package dev.fillplane.pour;

import java.util.OptionalInt;

/**
 * The crew that was told and what would do.
 *
 * @param people as told
 * @param mixers as told
 * @param needed fewest people, with the mixers told, with whom the pour holds; left out if none up
 *     to twelve do
 */
public record CrewNeed(int people, int mixers, OptionalInt needed) {}
