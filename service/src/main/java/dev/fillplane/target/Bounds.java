package dev.fillplane.target;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Names what a plane touches. */
final class Bounds {

  /** On a flat floor every point binds; this many tell enough. */
  private static final int MOST_HIGH_SPOTS = 4;

  /** Share of the steepest slope by which a plane may be off it. */
  private static final double SLOPE_SHARE = 1e-6;

  private Bounds() {}

  /**
   * High spots (readings first), then fixed heights and ceilings, then the slope, told at the
   * rooms' centroid.
   */
  static List<Bound> of(Plane plane, Limits limits) {
    List<Bound> bounds = new ArrayList<>();
    addHighSpots(bounds, plane, limits);
    for (Band band : limits.bands()) {
      if (band.off(plane.at(band.x(), band.y())) >= -Limits.TOUCH) {
        bounds.add(new Bound(band.kind(), Optional.empty(), band.x(), band.y()));
      }
    }
    double steepest = limits.maximumSlope();
    if (plane.slope() > 0 && plane.slope() >= steepest * (1 - SLOPE_SHARE)) {
      double x = limits.centroid().x();
      bounds.add(new Bound(BoundKind.SLOPE, Optional.empty(), x, limits.centroid().y()));
    }
    return bounds;
  }

  private static void addHighSpots(List<Bound> bounds, Plane plane, Limits limits) {
    HighPoints highs = limits.highs();
    BoundKind kind = limits.grindDepth() > 0 ? BoundKind.GRIND_DEPTH : BoundKind.MINIMUM_DEPTH;
    int[] near = highs.near(plane, -limits.clearance() - Limits.TOUCH).toArray();
    for (int i : near) {
      if (bounds.size() == MOST_HIGH_SPOTS) {
        return;
      }
      double spare = plane.at(highs.x(i), highs.y(i)) - highs.elevation(i) - limits.clearance();
      if (spare <= Limits.TOUCH && isNew(bounds, highs.x(i), highs.y(i))) {
        bounds.add(new Bound(kind, highs.name(i), highs.x(i), highs.y(i)));
      }
    }
  }

  /** An outline may meet a corner of a cell, so that a point is there twice. */
  private static boolean isNew(List<Bound> bounds, double x, double y) {
    return bounds.stream().noneMatch(b -> Math.hypot(b.x() - x, b.y() - y) < Limits.TOUCH);
  }
}
