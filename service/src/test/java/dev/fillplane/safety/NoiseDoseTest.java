package dev.fillplane.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoiseDoseTest {

  /** 29 CFR 1926.52 table D-2, which rounds the hours; 115 dBA: a quarter of an hour or less. */
  @ParameterizedTest
  @CsvSource({
    "90, 8",
    "92, 6",
    "95, 4",
    "97, 3",
    "100, 2",
    "102, 1.5",
    "105, 1",
    "110, 0.5",
    "115, 0.25"
  })
  void hoursOfTheTable(double level, double hours) {
    assertEquals(hours, NoiseDose.allowedHours(level), 0.011 * hours);
  }

  /** Derived: 100 dBA for 1 h and 95 dBA for 2 h are half the limit each. */
  @Test
  void partsAddUp() {
    assertEquals(0.5, NoiseDose.NONE.and(100, 1).dose(), 1e-12);
    assertEquals(1.0, NoiseDose.NONE.and(100, 1).and(95, 2).dose(), 1e-12);
  }

  /** 3 dB more for half as long is the same day (NIOSH, EU and UK, from memory). */
  @Test
  void levelOfADay() {
    assertEquals(85, NoiseDose.NONE.and(85, 8).level(), 1e-12);
    assertEquals(85, NoiseDose.NONE.and(88, 4).level(), 0.02);
    assertEquals(88, NoiseDose.NONE.and(88, 4).and(88, 4).level(), 1e-12);
    assertEquals(Double.NEGATIVE_INFINITY, NoiseDose.NONE.level());
  }
}
