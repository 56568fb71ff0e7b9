package dev.fillplane.flatness;

import java.util.Optional;
import java.util.OptionalDouble;

/** Where F-numbers do not apply, by the rules for lines of ASTM E1155 as published guides quote. */
public final class FNumberRules {

  private static final double[] SPACINGS = {0.3, 0.3048};
  private static final double SPACING_TOLERANCE = 0.01;
  private static final double SHORTEST = 3.3;

  /** 320 ft2, which the metric edition rounds to 30 m2. */
  private static final double SMALLEST = 320 * 0.3048 * 0.3048;

  private static final double ROUNDING = 1e-9;
  private static final int LEAST_READINGS = 12;

  private FNumberRules() {}

  /** Why a line has no F-numbers, as the end of a sentence. */
  public static Optional<String> against(double spacing, int readings) {
    if (!isOneFoot(spacing)) {
      return Optional.of("is not read every 12 in (300 mm)");
    }
    boolean isShort = (readings - 1) * spacing < SHORTEST * (1 - SPACING_TOLERANCE);
    return readings < LEAST_READINGS || isShort
        ? Optional.of("is shorter than 11 ft (3.3 m)")
        : Optional.empty();
  }

  /** Whether a section is too small for F-numbers; an area that was not told is large enough. */
  public static boolean isTooSmall(OptionalDouble area) {
    return area.isPresent() && area.getAsDouble() < SMALLEST * (1 - ROUNDING);
  }

  private static boolean isOneFoot(double spacing) {
    for (double foot : SPACINGS) {
      if (Math.abs(spacing - foot) <= (SPACING_TOLERANCE + ROUNDING) * foot) {
        return true;
      }
    }
    return false;
  }
}
