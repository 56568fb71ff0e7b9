package dev.fillplane.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class AirMoistureTest {

  /** Published dew-point table of the German flooring trade, 10 to 30 C; within 0.3 K. */
  @Test
  void dewPointOfThePublishedTable() {
    double[] air = {10, 15, 20, 25, 30};
    double[][] published = {
      {0.0, 2.5, 4.8, 6.8, 8.5},
      {4.7, 7.4, 9.6, 11.7, 13.5},
      {9.3, 12.0, 14.4, 16.5, 18.4},
      {13.8, 16.7, 19.1, 21.4, 23.3},
      {18.4, 21.4, 23.9, 26.1, 28.2},
    };
    for (int i = 0; i < air.length; i++) {
      for (int j = 0; j < 5; j++) {
        assertEquals(published[i][j], AirMoisture.dewPoint(air[i], 0.5 + 0.1 * j), 0.3);
      }
    }
  }

  /** Derived from the formula of Uno (ACI Materials Journal 95-M34), in kg/m2/h. */
  @Test
  void evaporation() {
    assertEquals(0.0890, hourly(20, 20, 0.5, 0), 5e-5);
    assertEquals(0.1212, hourly(25, 25, 0.5, 0), 5e-5);
    assertEquals(0.2583, hourly(25, 30, 0.4, 5), 5e-5);
    assertEquals(0.7822, hourly(30, 30, 0.3, 10), 5e-5);
    assertEquals(0, hourly(5, 30, 1, 10));
  }

  private static double hourly(double surface, double air, double humidity, double kilometres) {
    return 3600 * AirMoisture.evaporation(surface, air, humidity, kilometres / 3.6);
  }
}
