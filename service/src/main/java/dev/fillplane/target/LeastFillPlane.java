package dev.fillplane.target;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.target.PlaneProgram.Unknown;
import java.util.Optional;
import org.apache.commons.math3.exception.MathIllegalStateException;

/**
 * The plane of least fill: lowest at the centroid of the rooms, with the minimum depth over all
 * high points, under all ceilings, not steeper than allowed; of several such the least steep.
 *
 * <p>A linear program in few unknowns, solved by cutting planes (J. E. Kelley, J. SIAM 8, 1960):
 * start with the highest point and four directions of slope, solve, add the point and the direction
 * that are violated most, until none is by more than the tolerance. The limit on the slope is thus
 * the disc itself and not a polygon, and the answer turns with the plan.
 */
final class LeastFillPlane {

  /** What a cut may be violated by, in parts of the program's unit of height. */
  private static final double TOLERANCE = 1e-8;

  /** Cuts come in one by one; a case that needs more than this would be a defect. */
  private static final int MOST_ROUNDS = 400;

  private final Limits limits;
  private final PlaneProgram program;

  private LeastFillPlane(Limits limits) {
    this.limits = limits;
    this.program = PlaneProgram.over(limits);
  }

  /** Empty where the linear program cannot be solved, which is not expected. */
  static Optional<FoundTarget> find(Limits limits, Place place, Findings findings) {
    try {
      return Optional.of(search(limits, place, findings));
    } catch (MathIllegalStateException unsolved) {
      return Optional.empty();
    }
  }

  private static FoundTarget search(Limits limits, Place place, Findings findings) {
    LeastFillPlane search = new LeastFillPlane(limits);
    double[] best = search.settle(Unknown.EXCESS);
    double excess = Unknown.EXCESS.in(best);
    if (search.program.height(excess) > Limits.TOUCH) {
      search.noteFights(best, place, findings);
      return search(limits.open(), place, findings);
    }
    Plane plane = search.leastSteep(excess);
    return new FoundTarget(TargetShape.PLANE, plane, Bounds.of(plane, limits));
  }

  private Plane leastSteep(double excess) {
    program.atMost(Unknown.EXCESS, excess + TOLERANCE);
    double[] lowest = settle(Unknown.ELEVATION);
    program.atMost(Unknown.ELEVATION, Unknown.ELEVATION.in(lowest) + TOLERANCE);
    return lifted(program.plane(settle(Unknown.STEEPNESS)));
  }

  /** Minimises one unknown over all points and directions. */
  private double[] settle(Unknown least) {
    double[] best = program.minimise(least);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      boolean steep = program.cutSlope(best, least, TOLERANCE);
      boolean thin = program.cutPoint(best, TOLERANCE);
      if (!steep && !thin) {
        return best;
      }
      best = program.minimise(least);
    }
    return best;
  }

  /** Lifts a plane by what the tolerance left missing. */
  private Plane lifted(Plane plane) {
    HighPoints highs = limits.highs();
    int i = highs.highestOver(plane);
    double missing = highs.elevation(i) + limits.minimumDepth() - plane.at(highs.x(i), highs.y(i));
    return new Plane(plane.elevation() + Math.max(0, missing), plane.slopeX(), plane.slopeY());
  }

  /**
   * Names each ceiling that the plane of least excess passes most, with the tight spot nearest to
   * it.
   */
  private void noteFights(double[] best, Place place, Findings findings) {
    Plane plane = program.plane(best);
    double excess = program.height(Unknown.EXCESS.in(best));
    for (Limits.Cap cap : limits.ceilings()) {
      double by = plane.at(cap.x(), cap.y()) - cap.elevation();
      if (by > excess - Limits.TOUCH) {
        int spot = tightSpot(plane, cap);
        CeilingError.note(cap, by, limits.highs(), spot, place, findings);
      }
    }
  }

  private int tightSpot(Plane plane, Limits.Cap cap) {
    HighPoints highs = limits.highs();
    int spot = highs.highestOver(plane);
    double nearest = Math.hypot(highs.x(spot) - cap.x(), highs.y(spot) - cap.y());
    for (int i = 0; i < highs.count(); i++) {
      double spare = plane.at(highs.x(i), highs.y(i)) - highs.elevation(i) - limits.minimumDepth();
      double distance = Math.hypot(highs.x(i) - cap.x(), highs.y(i) - cap.y());
      if (spare <= Limits.TOUCH && distance < nearest) {
        spot = i;
        nearest = distance;
      }
    }
    return spot;
  }
}
