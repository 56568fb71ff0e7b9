package dev.fillplane.depth;

import dev.fillplane.room.Room;
import org.locationtech.jts.geom.Polygon;

/** How deep the pour is, for those who cut it into parts. */
public interface Depths {

  /** Target minus floor at a position, of the piecewise-linear surface; may be negative. */
  double at(double x, double y);

  /** What is poured in the part of the rooms that lies in {@code part}. */
  Fill within(Polygon part);

  /**
   * The same of a part that was cut from a room, which need not be cut by the rooms again; by what
   * rounding it sticks out of the room is poured like the rest.
   */
  default Fill within(Room room, Polygon part) {
    return within(part);
  }

  /**
   * What would be poured on the same floor, ground where it is, under a target that lies {@code
   * depth} lower: the area that is deeper than it, and the volume below that depth.
   */
  Fill deeperThan(double depth);
}
