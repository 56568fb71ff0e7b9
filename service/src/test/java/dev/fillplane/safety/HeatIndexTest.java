package dev.fillplane.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatIndexTest {

  /** The chart of the US National Weather Service, from memory; whole degrees F. */
  @ParameterizedTest
  @CsvSource({
    "80, 40, 80",
    "80, 80, 84",
    "86, 60, 91",
    "90, 50, 95",
    "90, 70, 105",
    "94, 60, 110",
    "96, 50, 108",
    "100, 40, 109",
    "104, 40, 119"
  })
  void chart(double air, double humidity, double index) {
    double celsius = HeatIndex.of((air - 32) / 1.8, humidity / 100);
    assertEquals(index, celsius * 1.8 + 32, 1.3);
  }

  /** Mild air feels as it is. */
  @ParameterizedTest
  @CsvSource({"20, 0.5, 20", "24, 0.5, 24"})
  void mild(double air, double humidity, double index) {
    assertEquals(index, HeatIndex.of(air, humidity), 1);
  }
}
