package dev.fillplane.safety;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The revised lifting equation: which mass is recommended for a lift, and how many times that the
 * load is (NIOSH Pub. 94-110, 1994, revised September 2021).
 *
 * <p>Always in its inch-pound form; the metric form differs by 2 to 3 %. Multipliers are not
 * rounded, so results differ from those printed in the manual by up to 0.4 lb and 0.1 of index.
 *
 * <p>Holds for two-handed lifts of stable loads by people who stand free. It does not hold for one
 * hand, more than 8 hours, kneeling, tight places, carrying more than two steps, slippery floors,
 * or loads that move in themselves (half-empty bags, buckets of mix).
 */
public final class LiftingEquation {

  private static final double INCH = 0.0254;
  private static final double POUND = 0.45359237;
  private static final double LOAD_CONSTANT = 51;
  private static final double HIGH_HANDS = 30;

  /** Keeps 30 in, 10 in and the like on their side when they come from metres. */
  private static final double EDGE = 1e-9;

  private LiftingEquation() {}

  /** Judges a lift. */
  public static LiftingResult of(LiftingTask task) {
    Optional<LiftingPoint> destination =
        task.control() ? Optional.of(at(task, task.destination())) : Optional.empty();
    return new LiftingResult(at(task, task.origin()), destination);
  }

  /**
   * The frequency to use where people lift for {@code lifting} out of every {@code period} seconds,
   * {@code period} up to 15 minutes (the manual's special procedure).
   */
  public static double averageFrequency(double liftsPerMinute, double lifting, double period) {
    return liftsPerMinute * lifting / period;
  }

  private static LiftingPoint at(LiftingTask task, HandPosition hands) {
    double travel = Math.abs(task.destination().vertical() - task.origin().vertical());
    LiftingMultipliers multipliers =
        new LiftingMultipliers(
            horizontal(hands.horizontal() / INCH),
            vertical(hands.vertical() / INCH),
            distance(travel / INCH),
            asymmetry(Math.toDegrees(hands.asymmetry())),
            LiftingTables.frequency(
                task.liftsPerMinute(), LiftingDuration.of(task.hours()), isHigh(task.origin())),
            LiftingTables.coupling(task.coupling(), isHigh(hands)));
    double recommended = LOAD_CONSTANT * multipliers.product() * POUND;
    return new LiftingPoint(
        recommended,
        recommended > 0 ? OptionalDouble.of(task.mass() / recommended) : OptionalDouble.empty(),
        multipliers);
  }

  private static boolean isHigh(HandPosition hands) {
    return hands.vertical() / INCH >= HIGH_HANDS - EDGE;
  }

  private static double horizontal(double inches) {
    return inches > 25 + EDGE ? 0 : 10 / Math.max(inches, 10);
  }

  private static double vertical(double inches) {
    return inches > 70 + EDGE ? 0 : 1 - 0.0075 * Math.abs(inches - 30);
  }

  private static double distance(double inches) {
    return inches > 70 + EDGE ? 0 : 0.82 + 1.8 / Math.max(inches, 10);
  }

  private static double asymmetry(double degrees) {
    return degrees > 135 + EDGE ? 0 : 1 - 0.0032 * degrees;
  }
}
