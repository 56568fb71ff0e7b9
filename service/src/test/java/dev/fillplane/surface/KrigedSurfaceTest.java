package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What holds for any floor, and floors that are hard to compute. */
class KrigedSurfaceTest {

  private static final double[] X = {1.1, 3.3, 5, 8.7, 12};
  private static final double[] Y = {1.2, 4.1, 3, 4.5, -2};

  @Test
  void orderOfTheSpotsDoesNotMatter() {
    Spots spots = Floors.scattered(50, 1, Floors::bumpy);
    for (int i = 1; i < 20; i++) {
      spots.x()[i] = spots.x()[0];
      spots.y()[i] = spots.y()[0];
    }
    KrigedSurface surface = usual(spots);
    List<Integer> order = new ArrayList<>(IntStream.range(0, 50).boxed().toList());
    Collections.shuffle(order, new Random(2));
    Spots shuffled =
        new Spots(
            order.stream().mapToDouble(i -> spots.x()[i]).toArray(),
            order.stream().mapToDouble(i -> spots.y()[i]).toArray(),
            order.stream().mapToDouble(i -> spots.elevation()[i]).toArray(),
            spots.variance());
    KrigedSurface same = usual(shuffled);
    assertArrayEquals(surface.elevations(X, Y), same.elevations(X, Y), 0);
    assertArrayEquals(surface.deviations(X, Y), same.deviations(X, Y), 0);
    for (int i = 0; i < 50; i++) {
      double residual = surface.leaveOneOut().residual()[order.get(i)];
      assertEquals(residual, same.leaveOneOut().residual()[i], 0);
    }
  }

  @Test
  void turnedAndMovedPlanGivesTheSameFloor() {
    for (int count : new int[] {5, 60, 400}) {
      Spots spots = Floors.scattered(count, 4, Floors::bumpy);
      assertSameWhenMoved(spots);
    }
  }

  /** On a lattice all distances come many times, so that rounding could choose other spots. */
  @Test
  void turnedLatticeGivesTheSameFloor() {
    double[] x = IntStream.range(0, 400).mapToDouble(i -> (i % 20) / 2.0).toArray();
    double[] y = IntStream.range(0, 400).mapToDouble(i -> (i / 20) / 2.0).toArray();
    assertSameWhenMoved(Floors.spots(x, y, Floors::bumpy));
  }

  private static void assertSameWhenMoved(Spots spots) {
    Spots at = Floors.spots(X, Y, new double[X.length]);
    Spots movedAt = Floors.moved(at, 0.7, 1e6, -2e6);
    KrigedSurface surface = usual(spots);
    KrigedSurface moved = usual(Floors.moved(spots, 0.7, 1e6, -2e6));
    assertArrayEquals(surface.elevations(X, Y), moved.elevations(movedAt.x(), movedAt.y()), 1e-7);
    assertArrayEquals(surface.deviations(X, Y), moved.deviations(movedAt.x(), movedAt.y()), 1e-7);
  }

  @Test
  void manyPositionsGiveWhatEachGives() {
    KrigedSurface surface = usual(Floors.scattered(30, 6, Floors::bumpy));
    Random random = new Random(8);
    double[] x = random.doubles(150, -3, 13).toArray();
    double[] y = random.doubles(150, -3, 9).toArray();
    double[] elevations = surface.elevations(x, y);
    double[] deviations = surface.deviations(x, y);
    for (int i = 0; i < 150; i++) {
      assertEquals(surface.elevation(x[i], y[i]), elevations[i], 0);
      assertEquals(surface.deviation(x[i], y[i]), deviations[i], 0);
    }
  }

  /** A spot read twice counts like one spot with half the variance and the mean elevation. */
  @Test
  void spotReadTwiceCountsDouble() {
    double[] x = {0, 4, 0, 4, 2, 2};
    double[] y = {0, 0, 3, 3, 1, 1};
    Spots twice = Floors.spots(x, y, new double[] {0.001, 0, 0.003, 0.002, 0.004, 0.006});
    Spots once =
        new Spots(
            Arrays.copyOf(x, 5),
            Arrays.copyOf(y, 5),
            new double[] {0.001, 0, 0.003, 0.002, 0.005},
            new double[] {1e-6, 1e-6, 1e-6, 1e-6, 0.5e-6});
    assertArrayEquals(usual(once).elevations(X, Y), usual(twice).elevations(X, Y), 1e-12);
    assertArrayEquals(usual(once).deviations(X, Y), usual(twice).deviations(X, Y), 1e-12);
  }

  @Test
  void betterReadingsPullHarder() {
    double[] x = {0, 4, 0, 4, 2};
    double[] y = {0, 0, 3, 3, 1.5};
    double[] z = {0, 0, 0, 0, 0.01};
    double[] good = {1e-6, 1e-6, 1e-6, 1e-6, 1e-7};
    double[] poor = {1e-6, 1e-6, 1e-6, 1e-6, 1e-5};
    double near = usual(new Spots(x, y, z, good)).elevation(2, 1.5);
    double far = usual(new Spots(x, y, z, poor)).elevation(2, 1.5);
    assertTrue(near > 0.008 && far < 0.006, near + " and " + far);
  }

  @Test
  void deviationGrowsAwayFromTheSpots() {
    KrigedSurface surface = usual(Floors.scattered(60, 12, Floors::bumpy));
    double[] away = surface.deviations(new double[] {5, 12, 20, 60}, new double[] {3, 3, 3, 3});
    for (int i = 1; i < away.length; i++) {
      assertTrue(away[i] > away[i - 1], Arrays.toString(away));
    }
  }

  @Test
  void clustersDoNotBreakIt() {
    Random random = new Random(14);
    double[] x =
        IntStream.range(0, 90).mapToDouble(i -> i % 3 * 5 + 0.01 * random.nextGaussian()).toArray();
    double[] y =
        IntStream.range(0, 90).mapToDouble(i -> i % 2 * 4 + 0.01 * random.nextGaussian()).toArray();
    assertBumpy(usual(Floors.spots(x, y, Floors::bumpy)), 0.006);
  }

  /** Readings without error are passed through, and the floor there is certain. */
  @Test
  void exactReadingsOfEveryShapeAreFollowed() {
    Spots spots = Floors.scattered(80, 16, Floors::bumpy);
    double[] tolerance = {1e-9, 1e-9, 1e-5, 1e-9};
    for (VariogramShape shape : VariogramShape.values()) {
      KrigedSurface surface = KrigedSurface.fit(spots, Floors.given(shape, 0, 9e-6, 4));
      assertBumpy(surface, 0.003);
      assertArrayEquals(
          spots.elevation(),
          surface.elevations(spots.x(), spots.y()),
          tolerance[shape.ordinal()],
          shape.name());
      for (double deviation : surface.deviations(spots.x(), spots.y())) {
        assertTrue(deviation >= 0 && deviation < 1e-6, shape + " " + deviation);
      }
    }
  }

  /** A long smooth range: the readings follow from so few numbers that the matrix is singular. */
  @Test
  void singularMatrixIsMended() {
    Spots spots = Floors.scattered(80, 16, Floors::bumpy);
    SurfaceWish wish = Floors.given(VariogramShape.GAUSSIAN, 0, 9e-4, 9);
    KrigedSurface surface = KrigedSurface.fit(spots, wish);
    for (int i = 0; i < 4; i++) {
      assertEquals(Floors.bumpy(X[i], Y[i]), surface.elevation(X[i], Y[i]), 0.001);
    }
    assertArrayEquals(spots.elevation(), surface.elevations(spots.x(), spots.y()), 1e-3);
  }

  /** The model a caller gives may say that there is nothing but a plane and no error. */
  @Test
  void noSillIsThePlaneOfLeastSquares() {
    Spots spots = Floors.scattered(20, 18, (x, y) -> 0.002 * x - 0.001 * y);
    for (double nugget : new double[] {0, 1e-6}) {
      SurfaceWish wish = Floors.given(Drift.LINEAR, VariogramShape.SPHERICAL, nugget, 0, 1);
      KrigedSurface surface = KrigedSurface.fit(spots, wish);
      assertEquals(0.002 * 3 - 0.001 * 4, surface.elevation(3, 4), 1e-10);
      assertTrue(surface.deviation(3, 4) < 0.001);
    }
  }

  @Test
  void twoThousandSpots() {
    Spots spots = Floors.scattered(2000, 20, Floors::bumpy);
    KrigedSurface surface = usual(spots);
    assertEquals(Floors.bumpy(5, 3), surface.elevation(5, 3), 0.0005);
    assertEquals(2000, surface.leaveOneOut().residual().length);
  }

  @Test
  void givenVariogramIsUsedUntouched() {
    Spots spots = Floors.scattered(20, 22, Floors::bumpy);
    SurfaceWish wish = Floors.given(VariogramShape.EXPONENTIAL, 0, 4e-6, 3);
    SurfaceSummary summary = KrigedSurface.fit(spots, wish).summary();
    assertEquals(wish.variogram(), summary.variogram());
    assertEquals(Drift.NONE, summary.drift());
  }

  @Test
  void spotsOnALineAreRefused() {
    Spots line = Floors.spots(new double[] {0, 1, 2}, new double[] {0, 1, 2}, Floors::bumpy);
    Exception refused = assertThrows(IllegalArgumentException.class, () -> usual(line));
    assertEquals("readings-on-a-line", refused.getMessage());
  }

  /** Between the spots the bumpy floor to {@code tolerance}, outside them still some number. */
  private static void assertBumpy(KrigedSurface surface, double tolerance) {
    double[] elevations = surface.elevations(X, Y);
    double[] deviations = surface.deviations(X, Y);
    for (int i = 0; i < 4; i++) {
      assertEquals(Floors.bumpy(X[i], Y[i]), elevations[i], tolerance);
      assertTrue(deviations[i] < tolerance, Arrays.toString(deviations));
    }
    assertEquals(Floors.bumpy(X[4], Y[4]), elevations[4], 0.1);
    assertTrue(deviations[4] < 0.1, Arrays.toString(deviations));
  }

  private static KrigedSurface usual(Spots spots) {
    return KrigedSurface.fit(spots, SurfaceWish.usual());
  }
}
