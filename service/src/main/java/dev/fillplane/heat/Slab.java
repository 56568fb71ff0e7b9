package dev.fillplane.heat;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The slab under the pour, as far as its moisture goes.
 *
 * @param humidity relative humidity in its holes, 0 to 1 (ASTM F2170), the highest of the tests
 * @param limit highest humidity that covering and primer bear, 0 to 1; 0.75, with a warning
 * @param grade where it lies against the ground
 * @param age days since it was cast
 * @param barrier whether a moisture barrier is on it, or will be before it is primed
 */
public record Slab(
    OptionalDouble humidity,
    OptionalDouble limit,
    Optional<SlabGrade> grade,
    OptionalInt age,
    Optional<Boolean> barrier) {

  /** Nothing told. */
  public static Slab unknown() {
    OptionalDouble none = OptionalDouble.empty();
    return new Slab(none, none, Optional.empty(), OptionalInt.empty(), Optional.empty());
  }

  boolean hasBarrier() {
    return barrier.orElse(false);
  }
}
