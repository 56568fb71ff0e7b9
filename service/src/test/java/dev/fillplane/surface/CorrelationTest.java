package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class CorrelationTest {

  /** Values by hand from the formulas. */
  @Test
  void followsTheFormulas() {
    assertEquals(1 - 0.75 + 0.0625, new Correlation(VariogramShape.SPHERICAL, 4).at(2), 1e-15);
    assertEquals(0, new Correlation(VariogramShape.SPHERICAL, 4).at(4), 0);
    assertEquals(0, new Correlation(VariogramShape.SPHERICAL, 4).at(6), 0);
    assertEquals(0.36787944117144233, new Correlation(VariogramShape.EXPONENTIAL, 4).at(4), 1e-15);
    assertEquals(0.36787944117144233, new Correlation(VariogramShape.GAUSSIAN, 4).at(4), 1e-15);
    assertEquals(0.7788007830714049, new Correlation(VariogramShape.GAUSSIAN, 4).at(2), 1e-15);
    assertEquals(0.4833577245965077, new Correlation(VariogramShape.MATERN_3_2, 4).at(4), 1e-12);
  }

  @Test
  void tableAgreesWithTheFormulas() {
    double range = 1.7;
    double[] x = new double[20_000];
    for (int i = 0; i < x.length; i++) {
      x[i] = 0.00123 * i - 3;
    }
    for (VariogramShape shape : VariogramShape.values()) {
      double[] out = new double[x.length];
      new Correlation(shape, range).fill(-1, 0.5, x, new double[x.length], 0, x.length, out);
      for (int i = 0; i < x.length; i++) {
        double distance = Math.hypot(x[i] + 1, 0.5);
        assertEquals(Floors.plainRho(shape, distance / range), out[i], 5e-11, shape.name());
      }
    }
  }
}
