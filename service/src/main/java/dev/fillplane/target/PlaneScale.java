package dev.fillplane.target;

import dev.fillplane.room.Position;

/**
 * Units in which planes are sought: positions from the centroid in units of the rooms' reach,
 * heights from the highest point in a unit of the same order as the differences, so that all
 * numbers are about 1 wherever the plan and the datum lie.
 *
 * @param top elevation of the highest point
 * @param unit of heights
 */
record PlaneScale(Position centroid, double reach, double top, double unit) {

  /** No unit of height is smaller where a slope is allowed. */
  private static final double LEAST_UNIT = 1e-4;

  static PlaneScale of(Limits limits) {
    HighPoints highs = limits.highs();
    Position centroid = limits.centroid();
    double top = Double.NEGATIVE_INFINITY;
    double lowest = Double.POSITIVE_INFINITY;
    double reach = 0;
    for (int i = 0; i < highs.count(); i++) {
      reach = Math.max(reach, Math.abs(highs.x(i) - centroid.x()));
      reach = Math.max(reach, Math.abs(highs.y(i) - centroid.y()));
      lowest = Math.min(lowest, highs.elevation(i));
      top = Math.max(top, highs.elevation(i));
    }
    double spread = Math.max(top - lowest, limits.minimumDepth());
    double tilt = Math.max(LEAST_UNIT, limits.maximumSlope() * reach);
    double unit = Math.max(Limits.TOUCH, Math.min(spread, tilt));
    return new PlaneScale(centroid, reach, top, unit);
  }

  double u(double x) {
    return (x - centroid.x()) / reach;
  }

  double v(double y) {
    return (y - centroid.y()) / reach;
  }

  /** An elevation in units. */
  double height(double elevation) {
    return (elevation - top) / unit;
  }

  /** A slope as the rise over the reach. */
  double rise(double slope) {
    return slope * reach / unit;
  }

  /** The slope of a rise. */
  double slope(double rise) {
    return rise * unit / reach;
  }

  /** The plane of the elevation at the centroid and two rises. */
  Plane plane(double height, double riseX, double riseY) {
    double slopeX = slope(riseX);
    double slopeY = slope(riseY);
    double elevation = top + height * unit;
    double atOrigin = elevation - slopeX * centroid.x() - slopeY * centroid.y();
    return new Plane(atOrigin, slopeX, slopeY);
  }
}
