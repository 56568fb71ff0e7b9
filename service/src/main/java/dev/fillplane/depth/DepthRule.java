package dev.fillplane.depth;

import dev.fillplane.surface.FloorSample;
import dev.fillplane.target.Plane;

/** Target minus floor, where nothing is ground; the least depth where the floor is ground. */
final class DepthRule {

  private final FloorSample floor;
  private final Levels levels;
  private final boolean onePlane;
  private final double least;

  DepthRule(FloorSample floor, Levels levels) {
    this.floor = floor;
    this.levels = levels;
    onePlane = levels.isOnePlane();
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
    return elevation - plane(x, y).at(x, y) + levels.groundTo().orElse(0);
  }

  private Plane plane(double x, double y) {
    int room = onePlane ? 0 : Math.max(0, floor.room(x, y));
    return levels.planes().get(room);
  }
}
