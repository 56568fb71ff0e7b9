package dev.fillplane.surface;

/**
 * A place where a reading is wanted.
 *
 * @param room number of its room
 */
public record PlannedSpot(double x, double y, int room, SpotReason why) {

  double distance(PlannedSpot other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
