package dev.fillplane.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Errors of placing 0.5 mm, texture 0.2 mm, yield 3 %, waste 0.65 %: common practice, no source.
 */
class BagDriversTest {

  /** 60 m2 of 9.1 mm and 0.9 mm more, 0.6 m3: 0.03 m3 of placing against 0.018 m3 of yield. */
  @Test
  void sharesOfAKnownFloor() {
    double[] variances = {0, 0.03 * 0.03, 0.012 * 0.012, 0.018 * 0.018, 0};
    variances[4] = Math.pow(0.6 * 0.0065 / 1.03, 2);
    assertShares(variances, BagDrivers.of(new double[] {0.546}, new double[] {60}));
  }

  /** Two floors 0.1 m3 to either side of that bring (0.1 m3)^2. */
  @Test
  void surveyCountsByTheSpreadOfItsVolumes() {
    double[] variances = {0.1 * 0.1, 0.03 * 0.03, 0.012 * 0.012, 0.018 * 0.018, 0};
    variances[4] = Math.pow(0.6 * 0.0065 / 1.03, 2);
    assertShares(variances, BagDrivers.of(new double[] {0.446, 0.646}, new double[] {60, 60}));
  }

  @Test
  void nothingPouredIsNotUnsure() {
    assertEquals(List.of(), BagDrivers.of(new double[] {0, 0}, new double[] {0, 0}));
  }

  private static void assertShares(double[] variances, List<Driver> drivers) {
    double sum = Arrays.stream(variances).sum();
    assertEquals(DriverSource.values().length, drivers.size());
    for (int i = 0; i < variances.length; i++) {
      assertEquals(DriverSource.values()[i], drivers.get(i).source());
      assertEquals(variances[i] / sum, drivers.get(i).share(), 1e-12);
    }
  }
}
