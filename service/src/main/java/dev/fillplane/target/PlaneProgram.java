package dev.fillplane.target;

import dev.fillplane.finding.Stopped;
import dev.fillplane.target.Cut.Cause;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A linear program over planes that grows cut by cut (J. E. Kelley, J. SIAM 8, 1960): the slope,
 * the high point and the band that a solution violates most come in one by one. The limit on the
 * slope is thus the disc itself and not a polygon, and the answer turns with the plan.
 */
final class PlaneProgram {

  /** What a cut may be violated by, in the program's unit of height. */
  static final double TOLERANCE = 1e-8;

  /** Cuts come in one by one; a case that needs more than this would be a defect. */
  private static final int MOST_ROUNDS = 400;

  private final Limits limits;
  private final PlaneScale scale;
  private final Cuts rows = new Cuts(Unknown.count());
  private final List<Cut> cuts = new ArrayList<>();
  private final Set<Integer> inside = new HashSet<>();
  private double allowed;

  PlaneProgram(Limits limits) {
    this.limits = limits;
    scale = PlaneScale.of(limits);
    rows.atMost(Unknown.STEEPNESS.ordinal(), steepest());
    rows.atLeast(0, 0, 0, 0, 0, 1, 0);
    rows.atLeast(0, 0, 0, 0, 0, 0, 1);
    for (int i = 0; i < 4; i++) {
      addDirection(i * Math.PI / 2);
    }
    addHigh(limits.highs().highestOver(Plane.level(0)));
  }

  PlaneScale scale() {
    return scale;
  }

  /** The half spaces so far. */
  List<Cut> cuts() {
    return cuts;
  }

  /** The limit of the slope in the program's units. */
  double steepest() {
    return scale.rise(limits.maximumSlope());
  }

  private void addDirection(double angle) {
    double x = Math.cos(angle);
    double y = Math.sin(angle);
    rows.atMost(0, 0, x, y, -1, 0, 0);
    cuts.add(new Cut(Cause.SLOPE, -1, 0, -x, -y, -steepest(), false));
  }

  private void addHigh(int i) {
    HighPoints highs = limits.highs();
    double u = scale.u(highs.x(i));
    double v = scale.v(highs.y(i));
    rows.atLeast(needed(i), 1, u, v, 0, 0, 0);
    cuts.add(new Cut(Cause.HIGH_POINT, i, 1, u, v, needed(i), false));
  }

  /** Keeps a band from above (sign -1) or from below (sign 1). */
  private void addBand(int i, int sign) {
    Band band = limits.bands().get(i);
    double u = sign * scale.u(band.x());
    double v = sign * scale.v(band.y());
    double value = sign * scale.height(sign < 0 ? band.highest() : band.lowest());
    rows.atLeast(value, sign, u, v, 0, 1, 0);
    cuts.add(new Cut(Cause.BAND, i, sign, u, v, value, true));
  }

  private double needed(int i) {
    return scale.height(limits.highs().elevation(i) + limits.clearance());
  }

  /** Bounds an unknown from above. */
  void atMost(Unknown unknown, double value) {
    rows.atMost(unknown.ordinal(), value);
    allowed = unknown == Unknown.EXCESS ? value : allowed;
  }

  /** How much fixed heights and ceilings may be missed by. */
  double allowed() {
    return allowed;
  }

  /** Holds the price at or above a linear function of the plane. */
  void priceAtLeast(double constant, double level, double alongX, double alongY) {
    double size = Math.max(1, Math.hypot(level, Math.hypot(alongX, alongY)));
    rows.atLeast(constant / size, -level / size, -alongX / size, -alongY / size, 0, 0, 1 / size);
  }

  /**
   * Minimises one unknown over all limits.
   *
   * @throws org.apache.commons.math3.exception.MathIllegalStateException if the simplex method
   *     fails
   */
  double[] settle(Unknown least) {
    double[] best = rows.minimise(least.ordinal());
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Stopped.ifInterrupted();
      double steepness = least == Unknown.STEEPNESS ? Unknown.STEEPNESS.in(best) : steepest();
      if (!cutOff(best, steepness, Unknown.EXCESS.in(best))) {
        return best;
      }
      best = rows.minimise(least.ordinal());
    }
    return best;
  }

  /** Cuts off a plane that keeps not all limits; tells whether it is. */
  boolean cutOff(double[] plane, double steepness, double excess) {
    boolean steep = cutSlope(plane, steepness);
    boolean thin = cutHigh(plane);
    boolean off = !limits.bands().isEmpty() && cutBand(plane, excess);
    return steep || thin || off;
  }

  private boolean cutSlope(double[] plane, double steepness) {
    double riseX = Unknown.RISE_X.in(plane);
    double riseY = Unknown.RISE_Y.in(plane);
    if (Math.hypot(riseX, riseY) <= steepness + TOLERANCE) {
      return false;
    }
    addDirection(Math.atan2(riseY, riseX));
    return true;
  }

  private boolean cutHigh(double[] plane) {
    HighPoints highs = limits.highs();
    int worst = highs.highestOver(scale.plane(plane[0], plane[1], plane[2]));
    double missing =
        needed(worst)
            - plane[0]
            - plane[1] * scale.u(highs.x(worst))
            - plane[2] * scale.v(highs.y(worst));
    // A point that is in already is only off by the accuracy of the simplex method.
    if (missing <= TOLERANCE || !inside.add(worst)) {
      return false;
    }
    addHigh(worst);
    return true;
  }

  private boolean cutBand(double[] solution, double excess) {
    Plane plane = scale.plane(solution[0], solution[1], solution[2]);
    int worst = -1;
    double most = excess * scale.unit() + TOLERANCE * scale.unit();
    for (int i = 0; i < limits.bands().size(); i++) {
      Band band = limits.bands().get(i);
      double off = band.off(plane.at(band.x(), band.y()));
      if (off > most) {
        most = off;
        worst = i;
      }
    }
    if (worst < 0) {
      return false;
    }
    Band band = limits.bands().get(worst);
    int sign = plane.at(band.x(), band.y()) > band.highest() ? -1 : 1;
    if (!inside.add(limits.highs().count() + 2 * worst + (sign < 0 ? 1 : 0))) {
      return false;
    }
    addBand(worst, sign);
    return true;
  }
}
