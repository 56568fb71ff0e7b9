package dev.fillplane.heat;

/** What the moisture of the air does to a base and to a fresh surface. Temperatures in C. */
final class AirMoisture {

  /** A base colder than this above the dew point may sweat (common practice, no source). */
  static final double DEW_MARGIN = 3;

  /**
   * Evaporation that a thin leveller bears with care, 0.25 kg/m2/h (common practice, no source).
   */
  static final double CAUTION = 0.25 / 3600;

  /** Evaporation at which nothing is poured, 0.5 kg/m2/h (common practice, no source). */
  static final double STOP = 0.5 / 3600;

  private static final double COLDEST = -18;

  private AirMoisture() {}

  /**
   * Dew point after Magnus with the constants of the WMO, from -45 to 60 C.
   *
   * @param humidity relative, above 0 and up to 1
   */
  static double dewPoint(double air, double humidity) {
    double a = 17.62 * air / (243.12 + air) + Math.log(humidity);
    return 243.12 * a / (17.62 - a);
  }

  /**
   * Water that leaves a fresh surface, in kg/m2/s: Uno, ACI Materials Journal 95-M34 (1998). An
   * estimate, good to about 40 %; never negative.
   *
   * @param surface of the fresh mix
   * @param humidity relative, 0 to 1
   * @param airspeed over the surface, in m/s
   */
  static double evaporation(double surface, double air, double humidity, double airspeed) {
    double difference = power(surface) - humidity * power(air);
    return Math.max(0, 5e-6 * difference * (3.6 * airspeed + 4)) / 3600;
  }

  private static double power(double temperature) {
    return Math.pow(Math.max(0, temperature - COLDEST), 2.5);
  }
}
