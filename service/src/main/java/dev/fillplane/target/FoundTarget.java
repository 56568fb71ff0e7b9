package dev.fillplane.target;

import java.util.List;

/**
 * The plane of the finished pour.
 *
 * @param boundBy what holds it there; empty for a given target
 */
public record FoundTarget(TargetShape shape, Plane plane, List<Bound> boundBy) {

  /** Copies the bounds. */
  public FoundTarget {
    boundBy = List.copyOf(boundBy);
  }
}
