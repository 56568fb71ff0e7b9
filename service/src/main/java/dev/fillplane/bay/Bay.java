package dev.fillplane.bay;

import dev.fillplane.depth.Fill;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * A part of the floor that is poured in one go: a room, a part of one between joints, dams and
 * walls, or a deep pocket that is filled before.
 *
 * @param id its name, unlike that of every other bay
 * @param room the room it lies in
 * @param polygon its part of the room, on plan; never changed
 * @param lift the lift it belongs to, from the bottom, from 1
 * @param pocket whether a later pass goes over it
 * @param depth how deep it is poured
 * @param wayOut where people leave it
 * @param leadsToExit whether the way out leads to an exit; else it is assumed
 * @param travel the direction in which it is poured
 * @param strips its ribbons in the order of the pour; they tile it
 * @param fill what is poured in all of them
 */
public record Bay(
    String id,
    Room room,
    Polygon polygon,
    int lift,
    boolean pocket,
    PassDepth depth,
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

  Bay named(String name) {
    return new Bay(
        name, room, polygon, lift, pocket, depth, wayOut, leadsToExit, travel, strips, fill);
  }
}
