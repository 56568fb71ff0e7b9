package dev.fillplane.pour;

import dev.fillplane.room.Position;

/** A planned joint between two bays, at an opening. */
public record Joint(String bay, String opening, Position from, Position to) {}
