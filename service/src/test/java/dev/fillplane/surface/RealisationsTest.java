package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class RealisationsTest {

  private static final List<Polygon> ROOM = List.of(rectangle(0, 10, 0, 6));

  @Test
  void pairsCancelOut() {
    Realisations drawn = Realisations.draw(known(40), ROOM, 20, 1);
    assertEquals(20, drawn.count());
    for (int cell = 0; cell < drawn.cells(); cell++) {
      for (int first = 0; first < 20; first += 2) {
        assertNotEquals(0, drawn.residual(first, cell));
        assertEquals(0, drawn.residual(first, cell) + drawn.residual(first + 1, cell), 0);
      }
    }
  }

  @Test
  void sameSeedSameFloors() {
    Realisations drawn = Realisations.draw(bumpy(40), ROOM, 9, 5);
    Realisations again = Realisations.draw(bumpy(40), ROOM, 9, 5);
    Realisations more = Realisations.draw(bumpy(40), ROOM, 14, 5);
    Realisations other = Realisations.draw(bumpy(40), ROOM, 9, 6);
    for (int realisation = 0; realisation < 9; realisation++) {
      for (int cell = 0; cell < drawn.cells(); cell++) {
        assertEquals(drawn.residual(realisation, cell), again.residual(realisation, cell), 0);
        assertEquals(drawn.residual(realisation, cell), more.residual(realisation, cell), 0);
        assertNotEquals(drawn.residual(realisation, cell), other.residual(realisation, cell));
      }
    }
  }

  /**
   * 20,000 pairs: a sample variance is then within 1 % (one standard error), so 6 % of it (six
   * standard errors) fails only on an error; the same for covariances in parts of the variances.
   */
  @Test
  void spreadIsWhatTheReadingsLeave() {
    KrigedSurface surface = known(12);
    Realisations drawn = Realisations.draw(surface, ROOM, 40_000, 3);
    int cells = drawn.cells();
    double[] x = new double[cells];
    double[] y = new double[cells];
    for (int cell = 0; cell < cells; cell++) {
      x[cell] = drawn.middle(cell)[0];
      y[cell] = drawn.middle(cell)[1];
    }
    LeftCovariance covariance = surface.left(x, y);
    double[] deviation = surface.deviations(x, y);
    for (int a = 0; a < cells; a += 3) {
      assertEquals(deviation[a] * deviation[a], covariance.row(a)[a], 1e-13);
      for (int b = a; b < cells; b += 5) {
        double sample = 0;
        for (int pair = 0; pair < 40_000; pair += 2) {
          sample += drawn.residual(pair, a) * drawn.residual(pair, b) / 20_000;
        }
        assertEquals(covariance.row(a)[b], sample, 0.06 * deviation[a] * deviation[b]);
      }
    }
  }

  /**
   * Covariance of two places by another way: how much a reading at one, as good as you like, lowers
   * the variance at the other is the square of their covariance over the variance at the first.
   */
  @Test
  void covarianceIsWhatOneMoreReadingTells() {
    Spots spots = Floors.scattered(12, 31, Floors::bumpy);
    SurfaceWish wish = Floors.given(Drift.LINEAR, VariogramShape.EXPONENTIAL, 1e-6, 9e-6, 2);
    KrigedSurface before = KrigedSurface.fit(spots, wish);
    LeftCovariance covariance = before.left(new double[] {5, 6}, new double[] {3, 3.5});
    double told = Math.pow(covariance.row(0)[1], 2) / (covariance.row(0)[0] + 1e-6);
    KrigedSurface after = KrigedSurface.fit(with(spots, 5, 3), wish);
    double left = Math.pow(after.deviation(6, 3.5), 2);
    assertEquals(covariance.row(1)[1] - told, left, 1e-14);
  }

  @Test
  void flatFloorHasSmallResiduals() {
    KrigedSurface flat =
        KrigedSurface.fit(Floors.scattered(40, 3, (x, y) -> 0), SurfaceWish.usual());
    Realisations drawn = Realisations.draw(flat, ROOM, 10, 1);
    for (int cell = 0; cell < drawn.cells(); cell++) {
      assertTrue(Math.abs(drawn.residual(0, cell)) < 0.002);
    }
  }

  @Test
  void floorWithoutVarianceHasNoResiduals() {
    SurfaceWish certain = Floors.given(VariogramShape.SPHERICAL, 0, 0, 1);
    KrigedSurface flat = KrigedSurface.fit(Floors.scattered(40, 3, (x, y) -> 0), certain);
    Realisations drawn = Realisations.draw(flat, ROOM, 10, 1);
    for (int cell = 0; cell < drawn.cells(); cell++) {
      assertEquals(0, drawn.residual(0, cell), 1e-7);
    }
  }

  @Test
  void nothingToDrawIsRefused() {
    KrigedSurface surface = bumpy(10);
    assertThrows(
        IllegalArgumentException.class, () -> Realisations.draw(surface, List.of(), 10, 1));
    assertThrows(IllegalArgumentException.class, () -> Realisations.draw(surface, ROOM, 0, 1));
  }

  /** The pairs take turns at the likely covariances; each is mirrored at the mean of its own. */
  @Test
  void pairsOfFittedSurfaceLieAboutTheMeansOfTheirCovariances() {
    KrigedSurface surface = bumpy(12);
    List<KrigedSurface> likely = surface.likely();
    Realisations drawn = Realisations.draw(surface, ROOM, 20, 1);
    for (int cell = 0; cell < drawn.cells(); cell++) {
      double x = drawn.middle(cell)[0];
      double y = drawn.middle(cell)[1];
      for (int pair = 0; pair < 10; pair++) {
        double shift = likely.get(pair % likely.size()).elevation(x, y) - mean(likely, x, y);
        double middle = (drawn.residual(2 * pair, cell) + drawn.residual(2 * pair + 1, cell)) / 2;
        assertEquals(shift, middle, 1e-12);
      }
    }
  }

  /** With 40,000 draws a variance is known to 1 %; within it and between it must add up. */
  @Test
  void spreadOfFittedSurfaceIsThatOfTheMixture() {
    KrigedSurface surface = bumpy(12);
    List<KrigedSurface> likely = surface.likely();
    Realisations drawn = Realisations.draw(surface, ROOM, 40_000, 3);
    for (int cell = 0; cell < drawn.cells(); cell += 5) {
      double x = drawn.middle(cell)[0];
      double y = drawn.middle(cell)[1];
      double wanted = 0;
      for (KrigedSurface other : likely) {
        double shift = other.elevation(x, y) - mean(likely, x, y);
        wanted += (Math.pow(other.deviation(x, y), 2) + shift * shift) / likely.size();
      }
      double sample = 0;
      for (int i = 0; i < drawn.count(); i++) {
        sample += Math.pow(drawn.residual(i, cell), 2) / drawn.count();
      }
      assertEquals(wanted, sample, 0.06 * wanted);
    }
  }

  private static double mean(List<KrigedSurface> surfaces, double x, double y) {
    return surfaces.stream().mapToDouble(other -> other.elevation(x, y)).average().orElseThrow();
  }

  private static KrigedSurface known(int count) {
    return KrigedSurface.fit(
        Floors.scattered(count, count, Floors::bumpy),
        Floors.given(Drift.LINEAR, VariogramShape.MATERN_3_2, 1e-6, 9e-6, 3));
  }

  private static KrigedSurface bumpy(int count) {
    return KrigedSurface.fit(Floors.scattered(count, count, Floors::bumpy), SurfaceWish.usual());
  }

  private static Spots with(Spots spots, double x, double y) {
    return Floors.spots(
        appended(spots.x(), x), appended(spots.y(), y), appended(spots.elevation(), 0.01));
  }

  private static double[] appended(double[] values, double value) {
    double[] longer = Arrays.copyOf(values, values.length + 1);
    longer[values.length] = value;
    return longer;
  }

  private static Polygon rectangle(double x1, double x2, double y1, double y2) {
    return (Polygon) new GeometryFactory().toGeometry(new Envelope(x1, x2, y1, y2));
  }
}
