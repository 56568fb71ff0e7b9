package dev.fillplane.bay;

import dev.fillplane.depth.Fill;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;

/**
 * A part of the floor that is poured in one go; here a whole room.
 *
 * @param id its name
 * @param room the room it lies in
 * @param wayOut where people leave it
 * @param leadsToExit whether the way out leads to an exit; else it is assumed
 * @param travel the direction in which it is poured
 * @param strips its ribbons in the order of the pour; they tile it
 * @param fill what is poured in all of them
 */
public record Bay(
    String id,
    Room room,
    Position wayOut,
    boolean leadsToExit,
    Travel travel,
    List<Strip> strips,
    Fill fill) {

  /** A longer front wants a dam when it is poured by hand (common practice, no source). */
  public static final double LONGEST_FRONT_BY_HAND = 6.0;

  /** Copies the strips. */
  public Bay {
    strips = List.copyOf(strips);
  }

  /** The longest of its ribbons; 0 if none is poured. */
  public double longestFront() {
    return strips.stream()
        .filter(strip -> strip.fill().volume() > 0)
        .mapToDouble(Strip::length)
        .max()
        .orElse(0);
  }
}
