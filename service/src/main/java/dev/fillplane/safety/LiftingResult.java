package dev.fillplane.safety;

import java.util.Optional;

/**
 * A lift, judged at its ends.
 *
 * @param origin where the load is taken up
 * @param destination where it is set down, if it is set down with care
 */
public record LiftingResult(LiftingPoint origin, Optional<LiftingPoint> destination) {

  /** The end at which less is recommended. */
  public LiftingPoint worst() {
    return destination
        .filter(end -> end.recommendedMass() < origin.recommendedMass())
        .orElse(origin);
  }
}
