package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LeaveOneOutTest {

  /** The closed form against a surface that is laid through the other spots. */
  @Test
  void agreesWithSurfacesOfTheOthers() {
    Spots spots = Floors.scattered(25, 11, Floors::bumpy);
    for (Drift drift : Drift.values()) {
      SurfaceWish wish = Floors.given(drift, VariogramShape.MATERN_3_2, 1e-6, 9e-6, 2);
      LeaveOneOut all = KrigedSurface.fit(spots, wish).leaveOneOut();
      for (int i = 0; i < spots.count(); i++) {
        KrigedSurface others = KrigedSurface.fit(without(spots, i), wish);
        double x = spots.x()[i];
        double y = spots.y()[i];
        double residual = spots.elevation()[i] - others.elevation(x, y);
        double deviation = Math.sqrt(Math.pow(others.deviation(x, y), 2) + 1e-6);
        assertTrue(all.told()[i]);
        assertEquals(residual, all.residual()[i], 1e-12);
        assertEquals(residual / deviation, all.standardized()[i], 1e-8);
      }
    }
  }

  /** Without the one spot off the line nothing tells the slope across it. */
  @Test
  void spotThatThePlaneHangsOnIsNotTold() {
    Spots spots =
        Floors.spots(
            new double[] {0, 1, 2, 3, 1}, new double[] {0, 0, 0, 0, 2}, (x, y) -> 0.001 * x * x);
    LeaveOneOut all = KrigedSurface.fit(spots, SurfaceWish.usual()).leaveOneOut();
    assertFalse(all.told()[4]);
    assertEquals(0, all.residual()[4], 0);
    assertTrue(all.told()[0]);
  }

  @Test
  void crossValidationSumsUp() {
    LeaveOneOut some =
        new LeaveOneOut(
            new double[] {0.003, -0.004, 0.9}, new double[3], new boolean[] {true, true, false});
    CrossValidation sum = some.crossValidation().get();
    assertEquals(Math.sqrt(12.5e-6), sum.rmse(), 1e-15);
    assertEquals(-0.004, sum.worst(), 0);
  }

  private static Spots without(Spots spots, int left) {
    return new Spots(
        without(spots.x(), left),
        without(spots.y(), left),
        without(spots.elevation(), left),
        without(spots.variance(), left));
  }

  private static double[] without(double[] values, int left) {
    return IntStream.range(0, values.length)
        .filter(i -> i != left)
        .mapToDouble(i -> values[i])
        .toArray();
  }
}
