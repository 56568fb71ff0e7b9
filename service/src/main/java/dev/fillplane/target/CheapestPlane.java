package dev.fillplane.target;

import dev.fillplane.finding.Stopped;
import dev.fillplane.target.FloorPrice.Priced;
import java.util.Optional;
import org.apache.commons.math3.exception.MathIllegalStateException;

/**
 * The cheapest plane where the floor may be ground. The price is convex in the three numbers of a
 * plane, so that its tangents bound it from below.
 *
 * <p>Newton steps within the limits make the trial planes; each tangent goes to a linear program
 * ({@link PlaneProgram}) whose least price is a lower bound of the optimum. The search ends when
 * the best plane is within {@link #GAP} of that bound; where the floor is so flat that Newton steps
 * do not help, the program's own solution is the next trial (Kelley).
 */
final class CheapestPlane {

  /** What the answer may be dearer than the optimum by, as a part of the whole price. */
  static final double GAP = 1e-6;

  /** The same in the program's unit of price: some nanometres of fill. */
  private static final double LEAST_GAP = 1e-6;

  /** Prices nearer than this, in that unit, are one; about the accuracy of the program. */
  private static final double SAME = 1e-8;

  /** A smaller share of the bend's size, along some direction, leaves the plane undetermined. */
  private static final double FLAT = 1e-6;

  /** A Newton step has to bring this part of what it promised. */
  private static final double KEPT_PROMISE = 0.25;

  /** A Newton step that promises less than this part of the gap is not gone. */
  private static final double LEAST_PROMISE = 1e-3;

  private static final int MOST_ROUNDS = 300;

  private final PlaneProgram program;
  private final FloorPrice price;
  private double[] best;
  private Priced bestPrice;

  private CheapestPlane(PlaneProgram program, FloorPrice price) {
    this.program = program;
    this.price = price;
  }

  /**
   * Finds it; empty if no plane is shown to be the optimum, which is not expected.
   *
   * @param program with its limits, which can be kept
   */
  static Optional<Plane> find(PlaneProgram program, FloorPrice price) {
    price.bound(program);
    CheapestPlane search = new CheapestPlane(program, price);
    if (!search.descend()) {
      return Optional.empty();
    }
    double[] plane = search.isFlat() ? search.leastSteep() : search.best;
    return Optional.of(program.scale().plane(plane[0], plane[1], plane[2]));
  }

  private boolean descend() {
    look(start());
    double[] stepped = null;
    double[] lead = best;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Stopped.ifInterrupted();
      if (best != stepped) {
        stepped = best;
        if (stepHelps()) {
          continue;
        }
      }
      Optional<double[]> bound = bound();
      if (bound.isPresent() && bestPrice.price() - Unknown.PRICE.in(bound.get()) <= gap()) {
        return true;
      }
      lead = bound.isPresent() ? bound.get() : between(best, lead);
      look(between(best, lead));
    }
    return false;
  }

  /** The cheapest plane by the tangents so far; empty if the program fails at these. */
  private Optional<double[]> bound() {
    try {
      return Optional.of(program.settle(Unknown.PRICE));
    } catch (MathIllegalStateException unsolved) {
      return Optional.empty();
    }
  }

  /** Goes a Newton step from the best plane, if that promises enough; tells if it was kept. */
  private boolean stepHelps() {
    Optional<double[]> step = within(best, bestPrice.slope(), bestPrice.bend());
    double promise = step.map(to -> promise(best, bestPrice, to)).orElse(0.0);
    if (promise <= gap() * LEAST_PROMISE) {
      return false;
    }
    double before = bestPrice.price();
    return before - look(step.get()).price() >= KEPT_PROMISE * promise;
  }

  private double gap() {
    return Math.max(LEAST_GAP, GAP * (bestPrice.price() + price.base()));
  }

  /** Prices a plane, gives its tangent to the program and keeps it if it is the cheapest yet. */
  private Priced look(double[] plane) {
    Priced priced = price.at(plane);
    double[] slope = priced.slope();
    double constant = priced.price();
    for (int i = 0; i < 3; i++) {
      constant -= slope[i] * plane[i];
    }
    program.priceAtLeast(constant, slope[0], slope[1], slope[2]);
    if (best == null || priced.price() < bestPrice.price()) {
      best = plane;
      bestPrice = priced;
    }
    return priced;
  }

  /** The plane of least squares within the limits. */
  private double[] start() {
    Priced squares = price.squares();
    double[] mean = {squares.price(), 0, 0};
    return within(mean, squares.slope(), squares.bend())
        .orElseGet(() -> program.settle(Unknown.EXCESS));
  }

  /** The least of a quadratic price over all limits, which come in as they are met. */
  private Optional<double[]> within(double[] plane, double[] slope, double[] bend) {
    Optional<NewtonStep> step = NewtonStep.from(plane, slope, bend, program.allowed());
    if (step.isEmpty()) {
      return Optional.empty();
    }
    Optional<double[]> found = step.get().within(program.cuts());
    while (found.isPresent()
        && program.cutOff(found.get(), program.steepest(), program.allowed())) {
      found = step.get().within(program.cuts());
    }
    return found;
  }

  private static double promise(double[] from, Priced priced, double[] to) {
    double[] d = {to[0] - from[0], to[1] - from[1], to[2] - from[2]};
    double[] slope = priced.slope();
    double[] b = priced.bend();
    double bend =
        b[0] * d[0] * d[0]
            + b[3] * d[1] * d[1]
            + b[5] * d[2] * d[2]
            + 2 * (b[1] * d[0] * d[1] + b[2] * d[0] * d[2] + b[4] * d[1] * d[2]);
    return -(slope[0] * d[0] + slope[1] * d[1] + slope[2] * d[2]) - bend / 2;
  }

  private static double[] between(double[] one, double[] other) {
    double[] middle = new double[3];
    for (int i = 0; i < 3; i++) {
      middle[i] = (one[i] + other[i]) / 2;
    }
    return middle;
  }

  /** Whether planes about the best may be as cheap. */
  private boolean isFlat() {
    double[] b = bestPrice.bend();
    double size = b[0] + b[3] + b[5];
    double determinant =
        b[0] * (b[3] * b[5] - b[4] * b[4])
            - b[1] * (b[1] * b[5] - b[4] * b[2])
            + b[2] * (b[1] * b[4] - b[3] * b[2]);
    return !(determinant > FLAT * size * size * size);
  }

  /** The least steep of the planes that are as cheap; the best one where that cannot be told. */
  private double[] leastSteep() {
    double[] cheapest = best;
    double limit = bestPrice.price() + SAME;
    program.atMost(Unknown.PRICE, limit);
    try {
      for (int round = 0; round < MOST_ROUNDS; round++) {
        Stopped.ifInterrupted();
        double[] plane = program.settle(Unknown.STEEPNESS);
        if (look(plane).price() <= limit + SAME) {
          return plane;
        }
      }
    } catch (MathIllegalStateException unsolved) {
      return cheapest;
    }
    return cheapest;
  }
}
