package dev.fillplane.heat;

/**
 * What the moisture of the air does to a base and to a fresh surface. Temperatures in C, humidity
 * relative, 0 to 1; air under 1 % does not occur and counts as that.
 */
final class AirMoisture {

  /** A base colder than this above the dew point may sweat (practice after ISO 8502-4). */
  static final double DEW_MARGIN = 3;

  /**
   * Evaporation that a thin leveller bears with care, 0.25 kg/m2/h (common practice, no source).
   */
  static final double CAUTION = 0.25 / 3600;

  /** Evaporation at which nothing is poured, 0.5 kg/m2/h (common practice, no source). */
  static final double STOP = 0.5 / 3600;

  /** Share by which an estimate of evaporation may be out (Hover, ACI SP-338, 2020). */
  static final double SPREAD = 0.4;

  private static final double DRIEST = 0.01;
  private static final double COLDEST = -18;

  private AirMoisture() {}

  /** Dew point after Magnus with the constants of the WMO, from -45 to 60 C. */
  static double dewPoint(double air, double humidity) {
    double a = 17.62 * air / (243.12 + air) + Math.log(Math.max(DRIEST, humidity));
    return 243.12 * a / (17.62 - a);
  }

  /**
   * Water that leaves a fresh surface, in kg/m2/s: Uno, ACI Materials Journal 95-M34 (1998), SI
   * form. An estimate, good to about 40 %; never negative.
   *
   * @param surface of the fresh mix
   * @param airspeed over the surface, in m/s
   */
  static double evaporation(double surface, double air, double humidity, double airspeed) {
    double difference = power(surface) - humidity * power(air);
    return Math.max(0, 5e-6 * difference * (3.6 * airspeed + 4)) / 3600;
  }

  /**
   * The same by Menzel's formula, {@code 0.315 (e0 - ea) (0.253 + 0.060 V)} with vapour pressures
   * in kPa and km/h (ACI 305R, from memory): an estimate of its own.
   */
  static double evaporationByMenzel(double surface, double air, double humidity, double airspeed) {
    double difference = vapourPressure(surface) - humidity * vapourPressure(air);
    return Math.max(0, 0.315 * difference * (0.253 + 0.060 * 3.6 * airspeed)) / 3600;
  }

  /** Pressure of saturated vapour in kPa, after Magnus as {@link #dewPoint}. */
  private static double vapourPressure(double temperature) {
    return 0.6112 * Math.exp(17.62 * temperature / (243.12 + temperature));
  }

  private static double power(double temperature) {
    return Math.pow(Math.max(0, temperature - COLDEST), 2.5);
  }
}
