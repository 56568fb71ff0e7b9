package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Prisms between a plane and a triangle of the floor.
 *
 * <p>The triangular prism is the textbook formula [C] (plane surveying notes, Univ. Melbourne); the
 * clipped prisms are closed forms derived and checked by summation over 360,000 cells [D]: one
 * positive corner a, others b, c: V = A a^3 / (3 (a - b)(a - c)); one negative corner c: V = A (a +
 * b + c) / 3 + A (-c)^3 / (3 (a - c)(b - c)). Triangle (0,0) (4,0) (0,3) m, depths in mm, volumes
 * in litres.
 */
class PrismSumTest {

  private static final Ring TRIANGLE = new Ring(new double[] {0, 4, 0}, new double[] {0, 0, 3});

  @ParameterizedTest
  @CsvSource({
    "10, -5, -5,  0, 8.88889",
    "10,  4, -8, 12, 16.74074",
    " 9,  6,  3, 36, 36",
    "12,  0, -6, 12, 16",
    "-1, -2, -3, -12, 0"
  })
  void clippedPrisms(double a, double b, double c, double net, double filled) {
    Prisms prisms = prisms(TRIANGLE, a, b, c);
    assertEquals(6, prisms.area(), 1e-12);
    assertEquals(filled, prisms.fillVolume() * 1e3, 5e-6);
    assertEquals(net, (prisms.fillVolume() - prisms.cutVolume()) * 1e3, 1e-12);
    assertEquals(6, prisms.fillArea() + prisms.cutArea(), 1e-12);
  }

  /** The same closed forms to all digits. */
  @Test
  void clippedPrismsExactly() {
    assertEquals(
        6 * 1000 / (3.0 * 15 * 15) / 1e3, prisms(TRIANGLE, 10, -5, -5).fillVolume(), 1e-16);
    double wedge = 6 * 6 / 3.0 + 6 * 512 / (3.0 * 18 * 12);
    assertEquals(wedge / 1e3, prisms(TRIANGLE, 10, 4, -8).fillVolume(), 1e-16);
  }

  /** (h1 + h2 + h6) s^2 / 6 on the half square of a grid. */
  @Test
  void triangularPrism() {
    Ring half = new Ring(new double[] {0, 20, 0}, new double[] {0, 0, 20});
    assertEquals((7 + 4 + 3) * 400 / 6.0 / 1e3, prisms(half, 7, 4, 3).fillVolume(), 1e-12);
  }

  @Test
  void floorInThePlaneIsNeitherFilledNorCut() {
    assertEquals(new Prisms(6, 0, 0, 0, 0), prisms(TRIANGLE, 0, 0, 0));
  }

  /** Depths of a wave at corners and centre: four triangles, each by the closed forms above. */
  @Test
  void cellThatThePlaneCuts() {
    PrismSum sum = new PrismSum();
    sum.addCell(new double[] {-1, -1, -1, -1}, 2, 3);
    // A pyramid cut off at a height of 1 of 3: two thirds of its edge lengths stay.
    assertEquals(9 * 4 / 9.0, sum.sum().fillArea(), 1e-12);
    assertEquals(4 * 2 / 3.0, sum.sum().fillVolume(), 1e-12);
    assertEquals(4 * 2 / 3.0, sum.sum().cutVolume(), 1e-12);
  }

  @Test
  void cellIsItsFourTriangles() {
    double[] corners = {0.004, -0.001, -0.006, 0.002};
    double centre = -0.0005;
    PrismSum cell = new PrismSum();
    cell.addCell(corners, centre, 2);
    PrismSum triangles = new PrismSum();
    double[] x = {0, 2, 2, 0};
    double[] y = {0, 0, 2, 2};
    for (int i = 0; i < 4; i++) {
      int j = (i + 1) % 4;
      double[] acrossX = {x[i], x[j], 1};
      double[] acrossY = {y[i], y[j], 1};
      triangles.add(acrossX, acrossY, new double[] {corners[i], corners[j], centre}, 3);
    }
    assertEquals(triangles.sum().fillVolume(), cell.sum().fillVolume(), 1e-16);
    assertEquals(triangles.sum().cutVolume(), cell.sum().cutVolume(), 1e-16);
    assertEquals(triangles.sum().fillArea(), cell.sum().fillArea(), 1e-14);
  }

  private static Prisms prisms(Ring ring, double... millimetres) {
    PrismSum sum = new PrismSum();
    double[] depths = new double[3];
    for (int i = 0; i < 3; i++) {
      depths[i] = millimetres[i] / 1e3;
    }
    sum.add(ring.x(), ring.y(), depths, ring.size());
    return sum.sum();
  }
}
