package dev.fillplane.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.fillplane.finding.FindingsException;
import dev.fillplane.quantity.UnitSystem;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The air on its own: verdict and warnings. */
class AirCheckerTest {

  /** In still air at 20 C and 50 % a mix of 20 C loses 0.089 kg/m2/h (Uno, derived). */
  @Test
  void aMildDayHolds() {
    AirCheck check = check(20, 0.5, 20, 20, 0);
    assertEquals(AirVerdict.HOLDS, check.verdict());
    assertEquals(0.0890, 3600 * check.evaporation(), 5e-5);
    assertEquals(0.6 * 0.0890, 3600 * check.evaporationBand().from(), 5e-5);
    assertEquals(1.4 * 0.0890, 3600 * check.evaporationBand().to(), 7e-5);
    assertEquals(9.26, check.dewPoint(), 0.005);
    assertEquals(10.74, check.margin(), 0.005);
    assertEquals(12.26, check.leastSubstrate(), 0.005);
    assertEquals(List.of(), warnings(check));
  }

  /** 0.089 kg/m2/h in still air grows with (V + 4) / 4; caution 0.25, stop 0.5, band 40 %. */
  @ParameterizedTest
  @CsvSource({
    "4.0, HOLDS, ",
    "4.1, TIGHT, surface-may-dry-fast",
    "7.2, TIGHT, surface-may-dry-fast",
    "7.3, TIGHT, surface-dries-fast",
    "18.4, TIGHT, surface-dries-fast",
    "18.5, BREAKS, surface-dries-too-fast"
  })
  void draughtUpToTheLimits(double kilometres, AirVerdict verdict, String code) {
    AirCheck check = check(20, 0.5, 20, 20, kilometres);
    assertEquals(verdict, check.verdict());
    assertEquals(code == null ? List.of() : List.of(code + " #"), warnings(check));
  }

  /**
   * Published verdicts: 16 C, 71 %, base 13 C is not acceptable; 21 C dry and 17 C wet bulb (67 %,
   * derived), base 19 C is acceptable; printed in whole degrees.
   */
  @Test
  void baseNearTheDewPoint() {
    AirCheck damp = check(16, 0.71, 13, 13, 0);
    assertEquals(AirVerdict.BREAKS, damp.verdict());
    assertEquals(2, damp.margin(), 0.5);
    assertEquals(List.of("floor-near-dew-point #/substrate"), warnings(damp));
    AirCheck dry = check(21, 0.67, 19, 19, 0);
    assertEquals(AirVerdict.HOLDS, dry.verdict());
    assertEquals(4, dry.margin(), 0.5);
  }

  /** Published: at 70 F and 65 % the base needs 62 F; charts in F part from Magnus by up to 3 F. */
  @Test
  void leastBase() {
    Units us = Units.of("us");
    double air = us.temperature(70);
    assertEquals(62, us.written(check(air, 0.65, air, air, 0).leastSubstrate()), 3);
  }

  @Test
  void aMarginOfThreeIsEnough() {
    double dewPoint = AirMoisture.dewPoint(20, 0.7);
    assertEquals(AirVerdict.HOLDS, check(20, 0.7, 20, dewPoint + 3, 0).verdict());
    assertEquals(AirVerdict.BREAKS, check(20, 0.7, 20, dewPoint + 2.999, 0).verdict());
  }

  @Test
  void withoutABaseTheSurfaceStandsIn() {
    OptionalDouble none = OptionalDouble.empty();
    AirCheck check = AirChecker.check(request(20, 0.9, 19, none, none));
    assertEquals(19 - AirMoisture.dewPoint(20, 0.9), check.margin(), 1e-9);
    assertEquals(List.of("airspeed-assumed #", "floor-near-dew-point #/surface"), warnings(check));
  }

  @Test
  void slipsOfUnitAreRefused() {
    AirCheckRequest request = request(200, 0.5, -31, OptionalDouble.of(81), OptionalDouble.of(31));
    FindingsException refused =
        assertThrows(FindingsException.class, () -> AirChecker.check(request));
    assertEquals(
        List.of("#/air", "#/surface", "#/substrate", "#/airspeed"),
        refused.errors().stream().map(error -> error.place().toString()).toList());
  }

  private static AirCheck check(
      double air, double humidity, double surface, double base, double kilometres) {
    return AirChecker.check(
        request(
            air, humidity, surface, OptionalDouble.of(base), OptionalDouble.of(kilometres / 3.6)));
  }

  private static AirCheckRequest request(
      double air, double humidity, double surface, OptionalDouble base, OptionalDouble airspeed) {
    return new AirCheckRequest(UnitSystem.METRIC, air, humidity, surface, base, airspeed);
  }

  private static List<String> warnings(AirCheck check) {
    return check.warnings().stream().map(f -> f.code() + " " + f.place()).toList();
  }
}
