package dev.fillplane.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Dew point and evaporation against tables; sources stand in them. */
class AirMoistureTest {

  /** Pounds on a square foot in an hour, in kg/m2/h. */
  private static final double POUND_ON_FOOT = 0.45359237 / (0.3048 * 0.3048);

  private static final Units US = Units.of("us");

  @ParameterizedTest
  @CsvFileSource(resources = "dew-points.csv", useHeadersInDisplayName = true)
  void dewPointOfThePublishedTable(double air, int percent, double published) {
    assertEquals(published, AirMoisture.dewPoint(air, percent / 100.0), 0.3);
  }

  /** The source prints 23.7 here, one more than its neighbours allow. */
  @Test
  void dewPointOfAMisprint() {
    assertEquals(22.7, AirMoisture.dewPoint(30, 0.65), 0.05);
  }

  /** Derived from the formula of Magnus. */
  @ParameterizedTest
  @CsvSource({
    "5, 30, -11.17", "5, 50, -4.58", "5, 70, -0.02", "5, 90, 3.50",
    "35, 30, 14.84", "35, 50, 23.02", "35, 70, 28.71", "35, 90, 33.11",
    "20, 30, 1.88", "25, 30, 6.21"
  })
  void dewPointOfColdAndHotAir(double air, int percent, double derived) {
    assertEquals(derived, AirMoisture.dewPoint(air, percent / 100.0), 0.006);
  }

  /**
   * Published examples, in whole degrees: 30 C at 55 % has 20 C, 75 F at 35 % has 45 F (24 C has 7
   * C), 16 C at 71 % has 11 C, 70 F at 65 % has 57 F; charts in F part from Magnus by up to 3 F.
   */
  @Test
  void dewPointOfPublishedExamples() {
    assertEquals(57, US.written(AirMoisture.dewPoint(US.temperature(70), 0.65)), 3);
    assertEquals(7, AirMoisture.dewPoint(24, 0.35), 0.6);
    assertEquals(20, AirMoisture.dewPoint(30, 0.55), 0.5);
    assertEquals(45, US.written(AirMoisture.dewPoint(US.temperature(75), 0.35)), 3);
    assertEquals(11, AirMoisture.dewPoint(16, 0.71), 0.5);
  }

  /**
   * The coefficients of Alduchov and Eskridge (1996), 17.625 and 243.04, differ by under 0.02 C.
   */
  @Test
  void otherCoefficientsSayTheSame() {
    for (double air = 5; air <= 35; air += 5) {
      for (double humidity = 0.3; humidity < 1; humidity += 0.1) {
        double a = 17.625 * air / (243.04 + air) + Math.log(humidity);
        assertEquals(243.04 * a / (17.625 - a), AirMoisture.dewPoint(air, humidity), 0.02);
      }
    }
  }

  @Test
  void dewPointOfSaturatedAirIsItsTemperature() {
    assertEquals(17, AirMoisture.dewPoint(17, 1), 1e-9);
    assertEquals(AirMoisture.dewPoint(17, 0.01), AirMoisture.dewPoint(17, 0), 1e-9);
  }

  /** Derived from the formula of Uno (ACI Materials Journal 95-M34), in kg/m2/h. */
  @ParameterizedTest
  @CsvSource({
    "20, 20, 0.5, 0, 0.0890",
    "25, 25, 0.5, 0, 0.1212",
    "25, 30, 0.4, 5, 0.2583",
    "30, 30, 0.3, 10, 0.7822"
  })
  void evaporationAfterUno(double mix, double air, double humidity, double wind, double derived) {
    assertEquals(derived, hourly(mix, air, humidity, wind), 5e-5);
  }

  /** Within 7 % or 0.004 lb/ft2/h of the table; the SI form of Uno is 5 % under his US form. */
  @ParameterizedTest
  @CsvFileSource(resources = "evaporation.csv", useHeadersInDisplayName = true)
  void evaporationOfThePublishedTable(
      double mix, double air, int percent, double wind, double published, double uno) {
    double ours =
        hourly(US.temperature(mix), US.temperature(air), percent / 100.0, 1.609344 * wind);
    assertEquals(published, ours / POUND_ON_FOOT, Math.max(0.004, 0.07 * published));
    assertEquals(uno, ours / POUND_ON_FOOT, 0.05 * uno);
  }

  /** Within 7 % or 0.004 lb/ft2/h of the same table. */
  @ParameterizedTest
  @CsvFileSource(resources = "evaporation.csv", useHeadersInDisplayName = true)
  void evaporationAfterMenzel(
      double mix, double air, int percent, double wind, double published, double uno) {
    double ours =
        3600
            * AirMoisture.evaporationByMenzel(
                US.temperature(mix), US.temperature(air), percent / 100.0, wind * 1609.344 / 3600);
    assertEquals(published, ours / POUND_ON_FOOT, Math.max(0.004, 0.07 * published));
  }

  @Test
  void waterThatWouldCondenseCountsAsNone() {
    assertEquals(0, hourly(5, 30, 1, 10));
    assertEquals(0, AirMoisture.evaporationByMenzel(5, 30, 1, 3));
    assertEquals(0, hourly(-20, -20, 1, 10));
  }

  /** Colder air over the same mix takes more water, by either formula. */
  @Test
  void coolerAirRaisesTheEvaporation() {
    SplittableRandom random = new SplittableRandom(21);
    for (int i = 0; i < 300; i++) {
      double mix = random.nextDouble(15, 35);
      double air = random.nextDouble(0, mix);
      double cooler = air - random.nextDouble(0.5, 10);
      double humidity = random.nextDouble(0.1, 1);
      double wind = random.nextDouble(0, 10);
      assertTrue(
          AirMoisture.evaporation(mix, cooler, humidity, wind)
              > AirMoisture.evaporation(mix, air, humidity, wind));
      assertTrue(
          AirMoisture.evaporationByMenzel(mix, cooler, humidity, wind)
              > AirMoisture.evaporationByMenzel(mix, air, humidity, wind));
    }
  }

  private static double hourly(double mix, double air, double humidity, double kilometres) {
    return 3600 * AirMoisture.evaporation(mix, air, humidity, kilometres / 3.6);
  }
}
