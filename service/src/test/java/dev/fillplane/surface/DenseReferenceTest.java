package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Sibson's natural neighbours and linear triangles against published and recomputed values.
 *
 * <p>Franke's first function and its 100 nodes: Franke 1979, NPS-53-79-003, nodes after Akima 1996,
 * ACM TOMS 22, Algorithm 761. Linear values by SciPy 1.17.1, Sibson values by CGAL 5.5.1, as
 * printed to 6 digits. Weights on the unit lattice: derived by hand, recomputed.
 */
class DenseReferenceTest {

  private static final double PRINTED = 1e-6;

  private static final Spots NODES = nodes();
  private static final DenseSurface SIBSON = DenseSurface.fit(NODES, Method.NATURAL_NEIGHBOUR);
  private static final DenseSurface LINEAR = DenseSurface.fit(NODES, Method.TRIANGLES);

  @ParameterizedTest
  @CsvSource({
    ".5, .5, 0.364331, 0.353851",
    ".25, .25, 1.080323, 1.069554",
    ".75, .25, 0.541571, 0.537122",
    ".4, .7, 0.169072, 0.168772",
    ".1, .9, 0.280705, 0.280029",
    ".9, .6, 0.161852, 0.161852"
  })
  void franke(double x, double y, double linear, double sibson) {
    assertEquals(linear, LINEAR.elevation(x, y), PRINTED);
    assertEquals(sibson, SIBSON.elevation(x, y), PRINTED);
  }

  @Test
  void frankeOverTheHull() {
    assertEquals(List.of(0.02901, 0.16248), rmsAndMaximum(LINEAR));
    assertEquals(List.of(0.03026, 0.16421), rmsAndMaximum(SIBSON));
  }

  private static List<Double> rmsAndMaximum(DenseSurface surface) {
    Geometry hull = KrigingReferenceTest.hull(NODES.x(), NODES.y());
    double squares = 0;
    double worst = 0;
    int count = 0;
    for (int i = 0; i <= 32; i++) {
      for (int j = 0; j <= 32; j++) {
        double x = i / 32.0;
        double y = j / 32.0;
        if (hull.covers(hull.getFactory().createPoint(new Coordinate(x, y)))) {
          double off = surface.elevation(x, y) - KrigingReferenceTest.franke(x, y);
          squares += off * off;
          worst = Math.max(worst, Math.abs(off));
          count++;
        }
      }
    }
    return List.of(rounded(Math.sqrt(squares / count)), rounded(worst));
  }

  private static double rounded(double value) {
    return Math.round(value * 1e5) / 1e5;
  }

  /** The weight of a node of the lattice is the value there of a floor that is 1 at the node. */
  @ParameterizedTest
  @CsvSource({
    "0.5, 0.5, 0, 0, 0.25",
    "0.25, 0.25, 0, 0, 0.5625",
    "0.25, 0.25, 1, 0, 0.1875",
    "0.25, 0.25, 0, 1, 0.1875",
    "0.25, 0.25, 1, 1, 0.0625",
    "0.25, 0.25, -1, 0, 0",
    "0.5, 0, 0, 0, 0.4444444444444444",
    "0.5, 0, 1, 0, 0.4444444444444444",
    "0.5, 0, 0, 1, 0.0277777777777778",
    "0.5, 0, 1, 1, 0.0277777777777778",
    "0.5, 0, 0, -1, 0.0277777777777778",
    "0.5, 0, 1, -1, 0.0277777777777778"
  })
  void weightsOnTheLattice(double x, double y, int column, int row, double weight) {
    Spots one = lattice((a, b) -> a == column && b == row ? 1 : 0);
    assertEquals(weight, DenseSurface.fit(one, Method.NATURAL_NEIGHBOUR).elevation(x, y), 1e-9);
  }

  private static Spots lattice(DoubleBinaryOperator floor) {
    double[] x = new double[49];
    double[] y = new double[49];
    for (int i = 0; i < x.length; i++) {
      x[i] = i % 7 - 3;
      y[i] = i / 7 - 3;
    }
    return Floors.spots(x, y, floor);
  }

  private static Spots nodes() {
    double[][] nodes = Floors.table("franke_100.csv");
    return Floors.spots(Floors.column(nodes, 0), Floors.column(nodes, 1), Floors.column(nodes, 2));
  }
}
