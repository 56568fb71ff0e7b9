package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Against values computed elsewhere. */
class KrigingReferenceTest {

  private static final double NUGGET = 0.5;

  /** Columns x, y, mean and variance of ordinary, then of universal kriging; see the test below. */
  private static final double[][] REFERENCE = Floors.table("kriging_small.csv");

  private static final Spots SIX =
      Floors.spots(
          new double[] {0, 4, 0, 4, 2, 1},
          new double[] {0, 0, 3, 3, 1, 2},
          new double[] {3, 7, 5, 12, 9, 6});

  /**
   * Reference: the R package gstat and an independent linear solve, which agree to 1e-12; six
   * points, spherical, partial sill 4, range 4, nugget 0.5, ordinary and universal kriging. Its
   * variance is that of a new reading, ours that of the floor, less by the nugget.
   */
  @Test
  void agreesWithGstat() {
    check(Drift.NONE, 2);
    check(Drift.LINEAR, 4);
  }

  private static void check(Drift drift, int column) {
    KrigedSurface surface = small(drift);
    for (int row = 0; row < 3; row++) {
      double[] at = REFERENCE[row];
      assertEquals(at[column], surface.elevation(at[0], at[1]), 1e-9);
      double variance = Math.pow(surface.deviation(at[0], at[1]), 2);
      assertEquals(at[column + 1] - NUGGET, variance, 1e-9);
    }
  }

  /**
   * At a spot the reference says what was read there, with no variance: it takes the nugget for a
   * part of the floor. Ours says how high the floor is: nearer to the others than the reading by
   * the nugget times the spot's weight, the same as just beside it.
   */
  @Test
  void doesNotReproduceTheReading() {
    double[] atSpot = REFERENCE[3];
    assertEquals(3, atSpot[2], 0);
    KrigedSurface surface = small(Drift.NONE);
    LeaveOneOut others = surface.leaveOneOut();
    double weight = Math.pow(others.standardized()[0], 2) / others.residual()[0];
    assertEquals(3 - NUGGET * weight, surface.elevation(0, 0), 1e-12);
    assertEquals(surface.elevation(1e-9, 0), surface.elevation(0, 0), 1e-8);
    assertTrue(surface.deviation(0, 0) > 0.1);
  }

  private static KrigedSurface small(Drift drift) {
    return KrigedSurface.fit(SIX, Floors.given(drift, VariogramShape.SPHERICAL, NUGGET, 4, 4));
  }

  /**
   * Franke's function at the 100 nodes of the R package interp (Akima 1996, ACM TOMS 22, algorithm
   * 761), on a 33 x 33 lattice within their hull. Root mean square there: triangles 0.02901 (SciPy
   * 1.17.1), Sibson 0.03026 (CGAL 5.5.1), thin plate spline 0.00930 (SciPy). Here one unit of the
   * function is 20 mm of floor and one unit of plan 10 m; a reading is good to 0.1 mm, which the
   * references take as exact. Measured here 0.00642.
   */
  @Test
  void isBetterThanTrianglesAndSibsonOnFranke() {
    double[][] nodes = Floors.table("franke_100.csv");
    double[] x = Arrays.stream(nodes).mapToDouble(row -> 10 * row[0]).toArray();
    double[] y = Arrays.stream(nodes).mapToDouble(row -> 10 * row[1]).toArray();
    double[] z = Arrays.stream(nodes).mapToDouble(row -> 0.02 * row[2]).toArray();
    double[] exact = new double[x.length];
    Spots spots = new Spots(x, y, z, exact);
    KrigedSurface surface = KrigedSurface.fit(spots, SurfaceWish.usual());
    Geometry hull = hull(x, y);
    double squares = 0;
    int count = 0;
    for (int i = 0; i <= 32; i++) {
      for (int j = 0; j <= 32; j++) {
        if (hull.covers(hull.getFactory().createPoint(new Coordinate(i / 3.2, j / 3.2)))) {
          double error = surface.elevation(i / 3.2, j / 3.2) / 0.02 - franke(i / 32.0, j / 32.0);
          squares += error * error;
          count++;
        }
      }
    }
    double rms = Math.sqrt(squares / count);
    assertTrue(rms < 0.0075, "rms " + rms);
  }

  static Geometry hull(double[] x, double[] y) {
    Coordinate[] coordinates = new Coordinate[x.length];
    Arrays.setAll(coordinates, i -> new Coordinate(x[i], y[i]));
    return new GeometryFactory().createMultiPointFromCoords(coordinates).convexHull();
  }

  static double franke(double x, double y) {
    return 0.75 * Math.exp(-(Math.pow(9 * x - 2, 2) + Math.pow(9 * y - 2, 2)) / 4)
        + 0.75 * Math.exp(-Math.pow(9 * x + 1, 2) / 49 - (9 * y + 1) / 10)
        + 0.5 * Math.exp(-(Math.pow(9 * x - 7, 2) + Math.pow(9 * y - 3, 2)) / 4)
        - 0.2 * Math.exp(-Math.pow(9 * x - 4, 2) - Math.pow(9 * y - 7, 2));
  }
}
