package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Polygon;

/** The factor made row by row against the covariances written down and factorised as a whole. */
class FieldFactorTest {

  private static final Polygon HALL =
      TestFloors.room("l", TestFloors.L_ROOM, TestFloors.ISLAND).outline().polygon();

  @ParameterizedTest
  @CsvSource({"12, LINEAR, 1", "13, NONE, 0.45", "40, LINEAR, 0.3", "7, LINEAR, 9"})
  void drawsAsThePlainFactor(int readings, Drift drift, double pitch) {
    Spots spots = Floors.scattered(readings, 3, Floors::bumpy);
    SurfaceWish wish = Floors.given(drift, VariogramShape.MATERN_3_2, 1e-6, 9e-6, 2);
    KrigedSurface surface = KrigedSurface.fit(spots, wish);
    RoomLattice lattice = RoomLattice.over(List.of(HALL), pitch, 500);
    check(surface, lattice);
  }

  /** Most of the lattice between them has no cell. */
  @Test
  void roomsFarApart() {
    Polygon far =
        TestFloors.room("f", TestFloors.moved(TestFloors.L_ROOM, 0.2, 300, 80)).outline().polygon();
    Spots spots = Floors.scattered(9, 4, Floors::bumpy);
    SurfaceWish wish = Floors.given(VariogramShape.EXPONENTIAL, 1e-6, 9e-6, 2);
    check(KrigedSurface.fit(spots, wish), RoomLattice.over(List.of(HALL, far), 0.5, 500));
  }

  private static void check(KrigedSurface surface, RoomLattice lattice) {
    int n = lattice.count();
    double[] normals = new Random(1).doubles(n, -2, 2).toArray();
    double[] slow = plain(surface, lattice, normals);
    surface.factor(lattice, 1e-9).draw(normals);
    assertArrayEquals(slow, normals, 1e-11);
  }

  private static double[] plain(KrigedSurface surface, RoomLattice lattice, double[] normals) {
    LeftCovariance covariance = surface.left(lattice.x(), lattice.y());
    int n = normals.length;
    double[] draw = new double[n];
    double[][] lower = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = covariance.row(j)[i];
        for (int k = 0; k < j; k++) {
          sum -= lower[i][k] * lower[j][k];
        }
        lower[i][j] = i == j ? Math.sqrt(sum) : sum / lower[j][j];
        draw[i] += lower[i][j] * normals[j];
      }
    }
    return draw;
  }

  @Test
  void singularMatrixGetsAsLittleAsHelps() {
    FieldFactor.Prior alike = (place, row) -> Arrays.fill(row, place, row.length, 4);
    FieldFactor factor = FieldFactor.of(alone(4, 3), alike, 1e-9);
    double[] draw = {1, 0, 0};
    factor.draw(draw);
    assertArrayEquals(new double[] {2, 2, 2}, draw, 1e-8);
    double[] rest = {0, 1, 0};
    factor.draw(rest);
    assertEquals(0, rest[0]);
    assertTrue(rest[1] > 0 && rest[1] < 1e-4, "about the root of twice the jitter");
  }

  @Test
  void hopelessMatrixIsRefused() {
    FieldFactor.Prior negative = (place, row) -> row[0] = -1;
    assertThrows(ArithmeticException.class, () -> FieldFactor.of(alone(1, 1), negative, 1e-14));
  }

  /** Places before any reading. */
  private static LeftCovariance alone(double sill, int places) {
    double[][] none = new double[0][];
    Correlation correlation = new Correlation(VariogramShape.SPHERICAL, 1);
    double[] at = new double[places];
    return new LeftCovariance(correlation, sill, at, at, none, none);
  }
}
