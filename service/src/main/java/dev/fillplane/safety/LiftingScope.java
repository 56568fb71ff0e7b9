package dev.fillplane.safety;

import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where the lifting equation does not hold (NIOSH Pub. 94-110, revised 2021, p. 6): one hand, over
 * 8 hours, seated or kneeling, tight places, loads that move in themselves, carrying, poor hold of
 * the shoes, air outside 66 to 79 F or 35 to 50 % of humidity.
 */
final class LiftingScope {

  /** Steps that a load may be carried. */
  static final int MOST_STEPS = 2;

  private static final Amount COLDEST = fahrenheit(66);
  private static final Amount WARMEST = fahrenheit(79);
  private static final int DRIEST = 35;
  private static final int MOISTEST = 50;

  /** Keeps the ends inside when they come from another unit. */
  private static final double ROUNDING = 1e-9;

  private final List<Remark> reasons = new ArrayList<>();

  private LiftingScope() {}

  /** What stands against the equation; nothing where it holds. */
  static List<Remark> whyNot(LiftingCheckRequest request) {
    LiftingCircumstances told = request.circumstances();
    LiftingScope scope = new LiftingScope();
    scope.refuseIf(
        request.isOverlong(),
        Remark.of("lift-over-eight-hours", "most", LiftingCheckRequest.LONGEST_HOURS));
    scope.refuseIf(isTrue(told.oneHand()), Remark.of("lift-with-one-hand"));
    scope.refuseIf(isTrue(told.kneeling()), Remark.of("lift-on-the-knees"));
    scope.refuseIf(isTrue(told.tightSpace()), Remark.of("lift-in-tight-space"));
    scope.refuseIf(isTrue(told.slippery()), Remark.of("lift-on-slippery-floor"));
    scope.refuseIf(
        told.load().filter(load -> load != LoadKind.FULL_BAG).isPresent(),
        Remark.of("lift-of-a-moving-load"));
    scope.refuseIf(
        told.steps().orElse(0) > MOST_STEPS,
        Remark.of("lift-and-carry", "steps", told.steps().orElse(0), "most", MOST_STEPS));
    scope.refuseIf(
        isOutside(told.air(), COLDEST.si(), WARMEST.si()),
        Remark.of("lift-in-cold-or-heat", "from", COLDEST, "to", WARMEST));
    scope.refuseIf(
        isOutside(told.humidity(), DRIEST / 100.0, MOISTEST / 100.0),
        Remark.of("lift-in-dry-or-moist-air", "from", DRIEST, "to", MOISTEST));
    return scope.reasons;
  }

  /** What was not told and decides whether it holds, in words. */
  static List<String> unknown(LiftingCircumstances told) {
    List<String> names = new ArrayList<>();
    addIf(told.load().isEmpty(), "kind of load", names);
    addIf(told.steps().isEmpty(), "steps", names);
    addIf(told.oneHand().isEmpty(), "one or two hands", names);
    addIf(told.kneeling().isEmpty(), "standing or kneeling", names);
    addIf(told.tightSpace().isEmpty(), "tight space", names);
    addIf(told.slippery().isEmpty(), "slippery floor", names);
    addIf(told.air().isEmpty(), "air", names);
    addIf(told.humidity().isEmpty(), "humidity", names);
    return names;
  }

  private void refuseIf(boolean refused, Remark reason) {
    if (refused) {
      reasons.add(reason);
    }
  }

  private static void addIf(boolean missing, String name, List<String> names) {
    if (missing) {
      names.add(name);
    }
  }

  private static boolean isTrue(Optional<Boolean> told) {
    return told.orElse(false);
  }

  private static boolean isOutside(OptionalDouble told, double from, double to) {
    return told.isPresent()
        && (told.getAsDouble() < from - ROUNDING || told.getAsDouble() > to + ROUNDING);
  }

  private static Amount fahrenheit(double degrees) {
    return Amount.of(
        Dimension.TEMPERATURE.unit(UnitSystem.US).toSi(degrees), Dimension.TEMPERATURE);
  }
}
