package dev.fillplane.bay;

import dev.fillplane.room.Position;

/**
 * A planned joint between two bays, at an opening.
 *
 * @param bay the bay that is poured first; its edge stands here against a stop
 * @param opening the doorway
 */
public record Joint(String bay, String opening, Position from, Position to) {}
