package dev.fillplane.target;

import java.util.HashSet;
import java.util.Set;

/**
 * A linear program over planes that grows cut by cut. Positions are counted from the centroid in
 * units of the rooms' reach, heights from the highest point in a unit of the same order as the
 * differences, so that all numbers are about 1 wherever the plan and the datum lie.
 */
final class PlaneProgram {

  /** What is sought, in the program's own units. */
  enum Unknown {
    /** Elevation at the centroid. */
    ELEVATION(0),
    /** Rise along x over the reach. */
    RISE_X(1),
    /** Rise along y over the reach. */
    RISE_Y(2),
    /** No smaller than the slope. */
    STEEPNESS(3),
    /** By how much ceilings are passed. */
    EXCESS(4);

    private final int column;

    Unknown(int column) {
      this.column = column;
    }

    /** Its value in a solution. */
    double in(double[] solution) {
      return solution[column];
    }
  }

  private final Limits limits;
  private final double reach;
  private final double top;
  private final double unit;
  private final Cuts cuts = new Cuts(Unknown.values().length);
  private final Set<Integer> inside = new HashSet<>();

  private PlaneProgram(Limits limits, double reach, double top, double unit) {
    this.limits = limits;
    this.reach = reach;
    this.top = top;
    this.unit = unit;
  }

  static PlaneProgram over(Limits limits) {
    HighPoints highs = limits.highs();
    int highest = highs.highestOver(Plane.level(0));
    double top = highs.elevation(highest);
    double reach = 0;
    double lowest = top;
    for (int i = 0; i < highs.count(); i++) {
      reach = Math.max(reach, Math.abs(highs.x(i) - limits.centroid().x()));
      reach = Math.max(reach, Math.abs(highs.y(i) - limits.centroid().y()));
      lowest = Math.min(lowest, highs.elevation(i));
    }
    double spread = Math.max(top - lowest, limits.minimumDepth());
    double unit =
        Math.max(Limits.TOUCH, Math.min(spread, Math.max(1e-4, limits.maximumSlope() * reach)));
    PlaneProgram program = new PlaneProgram(limits, reach, top, unit);
    program.start(highest);
    return program;
  }

  private void start(int highest) {
    cuts.atMost(Unknown.STEEPNESS.column, steepest());
    cuts.atLeast(0, 0, 0, 0, 0, 1);
    for (int i = 0; i < 4; i++) {
      addDirection(i * Math.PI / 2);
    }
    addPoint(highest);
    for (Limits.Cap cap : limits.ceilings()) {
      cuts.atMost((cap.elevation() - top) / unit, 1, u(cap.x()), v(cap.y()), 0, -1);
    }
  }

  private double u(double x) {
    return (x - limits.centroid().x()) / reach;
  }

  private double v(double y) {
    return (y - limits.centroid().y()) / reach;
  }

  private void addDirection(double angle) {
    cuts.atMost(0, 0, Math.cos(angle), Math.sin(angle), -1, 0);
  }

  private void addPoint(int i) {
    HighPoints highs = limits.highs();
    cuts.atLeast(needed(i), 1, u(highs.x(i)), v(highs.y(i)), 0, 0);
  }

  /** Bounds an unknown from above. */
  void atMost(Unknown unknown, double value) {
    cuts.atMost(unknown.column, value);
  }

  /** The least value of an unknown under all cuts so far; all unknowns there. */
  double[] minimise(Unknown unknown) {
    return cuts.minimise(unknown.column);
  }

  /**
   * Cuts off a solution that is too steep; tells whether it is. Only where the steepness itself is
   * sought has it to be told exactly, else the limit counts.
   */
  boolean cutSlope(double[] best, Unknown least, double tolerance) {
    double riseX = Unknown.RISE_X.in(best);
    double riseY = Unknown.RISE_Y.in(best);
    double allowed = least == Unknown.STEEPNESS ? Unknown.STEEPNESS.in(best) : steepest();
    if (Math.hypot(riseX, riseY) <= allowed + tolerance) {
      return false;
    }
    addDirection(Math.atan2(riseY, riseX));
    return true;
  }

  /** The limit of the slope in the program's units. */
  private double steepest() {
    return limits.maximumSlope() * reach / unit;
  }

  /** Cuts off a solution at the point over which most depth is missing; tells whether any is. */
  boolean cutPoint(double[] best, double tolerance) {
    int worst = -1;
    double most = tolerance;
    for (int i = 0; i < limits.highs().count(); i++) {
      double missing = missing(best, i);
      if (missing > most) {
        most = missing;
        worst = i;
      }
    }
    // A point that is in already is only off by the accuracy of the simplex method.
    if (worst < 0 || !inside.add(worst)) {
      return false;
    }
    addPoint(worst);
    return true;
  }

  private double missing(double[] best, int i) {
    HighPoints highs = limits.highs();
    return needed(i)
        - Unknown.ELEVATION.in(best)
        - Unknown.RISE_X.in(best) * u(highs.x(i))
        - Unknown.RISE_Y.in(best) * v(highs.y(i));
  }

  private double needed(int i) {
    return (limits.highs().elevation(i) - top + limits.minimumDepth()) / unit;
  }

  /** A height of the program in metres. */
  double height(double value) {
    return value * unit;
  }

  Plane plane(double[] best) {
    double slopeX = Unknown.RISE_X.in(best) * unit / reach;
    double slopeY = Unknown.RISE_Y.in(best) * unit / reach;
    double elevation = top + Unknown.ELEVATION.in(best) * unit;
    double atOrigin = elevation - slopeX * limits.centroid().x() - slopeY * limits.centroid().y();
    return new Plane(atOrigin, slopeX, slopeY);
  }
}
