package dev.fillplane.safety;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Unit;
import dev.fillplane.quantity.UnitSystem;

/**
 * How hot moist air feels in the shade: the regression of the US National Weather Service
 * (Rothfusz, SR 90-23, 1990, with its two adjustments; from memory), within about 1.3 F of the
 * tables of Steadman (1979).
 */
final class HeatIndex {

  private static final Unit FAHRENHEIT = Dimension.TEMPERATURE.unit(UnitSystem.US);

  /** From here on the regression is used. */
  private static final double WARM = 80;

  private HeatIndex() {}

  /** Of air in C and its relative humidity, 0 to 1; in C. */
  static double of(double air, double humidity) {
    double t = FAHRENHEIT.fromSi(air);
    double r = 100 * humidity;
    double simple = (t + 0.5 * (t + 61 + 1.2 * (t - 68) + 0.094 * r)) / 2;
    return FAHRENHEIT.toSi(simple < WARM ? simple : regression(t, r) + adjustment(t, r));
  }

  private static double regression(double t, double r) {
    return -42.379
        + 2.04901523 * t
        + 10.14333127 * r
        - 0.22475541 * t * r
        - 6.83783e-3 * t * t
        - 5.481717e-2 * r * r
        + 1.22874e-3 * t * t * r
        + 8.5282e-4 * t * r * r
        - 1.99e-6 * t * t * r * r;
  }

  private static double adjustment(double t, double r) {
    if (r < 13 && t >= 80 && t <= 112) {
      return -(13 - r) / 4 * Math.sqrt((17 - Math.abs(t - 95)) / 17);
    }
    return r > 85 && t >= 80 && t <= 87 ? (r - 85) / 10 * (87 - t) / 5 : 0;
  }
}
