package dev.fillplane.depth;

import dev.fillplane.surface.FloorSample;
import dev.fillplane.target.Plane;

/** Target minus floor, where nothing is ground; the least depth where the floor is ground. */
final class DepthRule {

  private final FloorSample floor;
  private final Levels levels;
  private final Plane one;
  private final double least;
  private final double ground;

  DepthRule(FloorSample floor, Levels levels) {
    this.floor = floor;
    this.levels = levels;
    one = levels.isOnePlane() ? levels.planes().get(0) : null;
    ground = levels.groundTo().orElse(0);
    least = levels.groundTo().orElse(Double.NEGATIVE_INFINITY);
  }

  /** Depth in a room over a floor of some elevation. */
  double at(int room, double x, double y, double elevation) {
    return Math.max(least, levels.planes().get(room).at(x, y) - elevation);
  }

  /** The same in the room that a position lies in; outside all rooms in the first. */
  double at(double x, double y, double elevation) {
    return Math.max(least, plane(x, y).at(x, y) - elevation);
  }

  /** By how much the floor at a position stands above what it is ground to; negative below. */
  double above(double x, double y, double elevation) {
    return elevation - plane(x, y).at(x, y) + ground;
  }

  private Plane plane(double x, double y) {
    return one != null ? one : levels.planes().get(Math.max(0, floor.room(x, y)));
  }
}
