package dev.fillplane.bay;

import dev.fillplane.depth.Depths;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.room.Position;
import java.util.Optional;

/**
 * A planned joint: the pour ends here against a stop.
 *
 * @param bay the bay that is poured first; its edge stands here
 * @param kind why the pour ends here
 * @param opening the doorway, if it is one
 * @param from one end
 * @param to the other end
 * @param length of the stop
 * @param height of the stop: the deepest pour along it and 10 mm
 */
public record Joint(
    String bay,
    JointKind kind,
    Optional<String> opening,
    Position from,
    Position to,
    @Measured(Dimension.PLAN) double length,
    @Measured(Dimension.HEIGHT) double height) {

  /** How far a stop stands above the pour (common practice, no source). */
  public static final double FREEBOARD = 0.010;

  /** The floor between is linear within a cell. */
  private static final double STEP = 0.1;

  private static final int MOST_STEPS = 400;

  /** Between two positions, with a stop for the depths there. */
  static Joint of(
      String bay, JointKind kind, Optional<String> opening, Position from, Position to, Stop stop) {
    return new Joint(
        bay, kind, opening, from, to, from.distance(to), stop.deepest(from, to) + FREEBOARD);
  }

  Joint ofBay(String other) {
    return new Joint(other, kind, opening, from, to, length, height);
  }

  Position middle() {
    return new Position((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
  }

  /** How deep the pour is that a stop holds. */
  @FunctionalInterface
  interface Stop {

    double depth(double x, double y);

    static Stop of(Depths depths) {
      return depths::at;
    }

    /** The deepest place between two positions, looked for every 0.1 m; at least 0. */
    default double deepest(Position from, Position to) {
      int steps = (int) Math.min(MOST_STEPS, Math.max(2, Math.ceil(from.distance(to) / STEP)));
      double deepest = 0;
      for (int i = 0; i <= steps; i++) {
        double share = (double) i / steps;
        double x = from.x() + share * (to.x() - from.x());
        double y = from.y() + share * (to.y() - from.y());
        deepest = Math.max(deepest, depth(x, y));
      }
      return deepest;
    }
  }
}
