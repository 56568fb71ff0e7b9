package dev.fillplane.target;

import java.util.Optional;
import org.apache.commons.math3.exception.MathIllegalStateException;

/** Finds the best plane of some rooms within limits that can be kept. */
final class PlaneSearch {

  private PlaneSearch() {}

  /** Empty where the linear program cannot be solved, which is not expected. */
  static Optional<Plane> find(Limits limits, Rates rates) {
    try {
      PlaneProgram program = new PlaneProgram(limits);
      if (!limits.bands().isEmpty()) {
        double excess = Unknown.EXCESS.in(program.settle(Unknown.EXCESS));
        program.atMost(Unknown.EXCESS, excess + PlaneProgram.TOLERANCE);
      }
      Optional<Plane> found =
          limits.grindDepth() > 0
              ? CheapestPlane.find(program, new FloorPrice(limits, program.scale(), rates))
              : Optional.of(LeastFillPlane.find(program));
      return found.map(plane -> lifted(plane, limits));
    } catch (MathIllegalStateException unsolved) {
      return Optional.empty();
    }
  }

  /** Lifts a plane by what the tolerance of the program left missing. */
  private static Plane lifted(Plane plane, Limits limits) {
    HighPoints highs = limits.highs();
    int i = highs.highestOver(plane);
    double missing = highs.elevation(i) + limits.clearance() - plane.at(highs.x(i), highs.y(i));
    return new Plane(plane.elevation() + Math.max(0, missing), plane.slopeX(), plane.slopeY());
  }
}
