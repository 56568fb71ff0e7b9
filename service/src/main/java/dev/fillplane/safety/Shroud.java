package dev.fillplane.safety;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;

/**
 * The shroud of a grinder held in the hands (29 CFR 1926.1153 table 1, grinders held in the hands).
 */
final class Shroud {

  private static final double CFM_PER_INCH = 25;

  private Shroud() {}

  /** Air that it has to draw for a wheel of {@code diameter}. */
  static double airflow(double diameter) {
    double inches = Dimension.HEIGHT.unit(UnitSystem.US).fromSi(diameter);
    return Dimension.AIRFLOW.unit(UnitSystem.US).toSi(CFM_PER_INCH * inches);
  }
}
