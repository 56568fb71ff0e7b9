package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A floor that is a plane comes out as that plane. */
class KrigedPlaneTest {

  /** Tilts up to 20 mm/m, few and many spots, in and round the room. */
  @Test
  void anyTiltIsReproduced() {
    Random random = new Random(7);
    for (int round = 0; round < 60; round++) {
      double tilt = 0.02 * random.nextDouble();
      double way = 2 * Math.PI * random.nextDouble();
      double slopeX = tilt * Math.cos(way);
      double slopeY = tilt * Math.sin(way);
      Spots spots =
          Floors.scattered(4 + random.nextInt(60), round, (x, y) -> 100 + slopeX * x + slopeY * y);
      KrigedSurface surface = KrigedSurface.fit(spots, SurfaceWish.usual());
      for (int i = 0; i < 20; i++) {
        double x = 14 * random.nextDouble() - 2;
        double y = 10 * random.nextDouble() - 2;
        assertEquals(100 + slopeX * x + slopeY * y, surface.elevation(x, y), 1e-9);
      }
    }
  }

  @Test
  void flatFloorIsFlatAndNotQuiteCertain() {
    Spots spots = Floors.scattered(40, 3, (x, y) -> 0);
    KrigedSurface surface = KrigedSurface.fit(spots, SurfaceWish.usual());
    assertEquals(0, surface.elevation(5, 3), 1e-12);
    double deviation = surface.deviation(5, 3);
    assertTrue(deviation > 5e-5 && deviation < 5e-4, "deviation " + deviation);
    assertEquals(1e-8, surface.summary().variogram().get().sill(), 1e-15);
  }

  @Test
  void threeSpotsGiveTheirPlane() {
    Spots spots =
        Floors.spots(
            new double[] {0, 4, 0}, new double[] {0, 0, 3}, new double[] {0.001, 0.005, 0.010});
    for (Drift drift : Drift.values()) {
      KrigedSurface surface =
          KrigedSurface.fit(spots, new SurfaceWish(null, drift, Optional.empty(), null));
      assertEquals(0.001 + 0.001 * 1.5 + 0.003 * 2.5, surface.elevation(1.5, 2.5), 1e-12);
      assertEquals(
          new SurfaceSummary(Method.KRIGING, Drift.LINEAR, Optional.empty(), Optional.empty()),
          surface.summary());
      assertEquals(0.001, surface.deviation(0, 0), 1e-9);
      double between = surface.deviation(1.5, 1.2);
      assertTrue(between > 0.001 && between < 0.003, "deviation " + between);
    }
  }

  @Test
  void threePlacesReadTwiceGiveOnePlane() {
    Spots spots =
        Floors.spots(
            new double[] {0, 0, 4, 4, 0, 0},
            new double[] {0, 0, 0, 0, 3, 3},
            new double[] {0.001, 0.003, 0.004, 0.006, 0.010, 0.012});
    KrigedSurface surface = KrigedSurface.fit(spots, SurfaceWish.usual());
    assertEquals(0.002, surface.elevation(0, 0), 1e-12);
    assertEquals(0.011 + 0.0015, surface.elevation(2, 3), 1e-12);
    assertTrue(surface.summary().variogram().isEmpty());
  }

  @Test
  void fewSpotsGetTheUsualCovariance() {
    Spots seven = Floors.scattered(7, 5, Floors::bumpy);
    Variogram used = KrigedSurface.fit(seven, SurfaceWish.usual()).summary().variogram().get();
    assertEquals(new Variogram(VariogramShape.MATERN_3_2, Floors.READING, 9e-6, 3), used);
  }
}
