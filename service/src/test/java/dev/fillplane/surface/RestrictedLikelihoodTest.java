package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

class RestrictedLikelihoodTest {

  /** Differences, because the fast way leaves out what neither sill nor range moves. */
  @Test
  void agreesWithThePlainFormula() {
    for (Drift drift : Drift.values()) {
      for (int count : new int[] {4, 9, 10, 11, 12, 40}) {
        LocalSpots spots = LocalSpots.of(uneven(count));
        DriftTerms terms = DriftTerms.of(drift, 10);
        RestrictedLikelihood likelihood = new RestrictedLikelihood(spots, terms);
        double plainFirst = plain(spots, terms, 1e-6, 1);
        double first = likelihood.at(matern(1)).minusTwiceLog(1e-6);
        for (double range : new double[] {0.3, 2, 11}) {
          for (double sill : new double[] {1e-8, 4e-6, 1e-3}) {
            double expected = plain(spots, terms, sill, range) - plainFirst;
            double actual = likelihood.at(matern(range)).minusTwiceLog(sill) - first;
            assertEquals(expected, actual, 1e-7 * Math.max(1, Math.abs(expected)));
          }
        }
      }
    }
  }

  /** A simulated floor, 3 mm and 1.5 m: single floors tell it to about a factor of 2. */
  @Test
  void findsSillAndRangeOfSimulatedFloors() {
    double logSill = 0;
    double logRange = 0;
    for (int floor = 0; floor < 8; floor++) {
      Spots places = Floors.scattered(120, floor, (x, y) -> 0);
      Spots spots = Floors.drawn(places, VariogramShape.MATERN_3_2, 9e-6, 1.5, 100 + floor);
      Variogram fitted = KrigedSurface.fit(spots, SurfaceWish.usual()).summary().variogram().get();
      assertTrue(fitted.sill() > 9e-6 / 4 && fitted.sill() < 9e-6 * 4, fitted.toString());
      assertTrue(fitted.range() > 0.75 && fitted.range() < 3, fitted.toString());
      logSill += Math.log(fitted.sill() / 9e-6) / 8;
      logRange += Math.log(fitted.range() / 1.5) / 8;
    }
    assertEquals(0, logSill, 0.3);
    assertEquals(0, logRange, 0.2);
  }

  /** The fit is at the lowest value: no sill or range beside it is better. */
  @Test
  void fitIsTheBest() {
    Spots spots = Floors.scattered(40, 9, Floors::bumpy);
    Variogram fitted = KrigedSurface.fit(spots, SurfaceWish.usual()).summary().variogram().get();
    LocalSpots local = LocalSpots.of(spots);
    DriftTerms terms = DriftTerms.of(Drift.LINEAR, 10);
    double best = plain(local, terms, fitted.sill(), fitted.range());
    for (double range = 0.3; range < 10; range *= 1.25) {
      for (double sill = 1e-8; sill < 1e-3; sill *= 1.5) {
        assertTrue(plain(local, terms, sill, range) > best - 1e-3, sill + " " + range);
      }
    }
  }

  private static Correlation matern(double range) {
    return new Correlation(VariogramShape.MATERN_3_2, range);
  }

  private static Spots uneven(int count) {
    Spots spots = Floors.scattered(count, count, Floors::bumpy);
    double[] variance = new Random(1).doubles(count, 1e-7, 4e-6).toArray();
    return new Spots(spots.x(), spots.y(), spots.elevation(), variance);
  }

  /** log det V + log det F'V^-1F + (z - Fb)'V^-1(z - Fb), by LU. */
  private static double plain(LocalSpots spots, DriftTerms terms, double sill, double range) {
    int n = spots.count();
    RealMatrix v = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double h = Math.hypot(spots.x()[i] - spots.x()[j], spots.y()[i] - spots.y()[j]);
        v.setEntry(i, j, sill * Floors.plainRho(VariogramShape.MATERN_3_2, h / range));
      }
      v.addToEntry(i, i, spots.variance()[i]);
    }
    RealMatrix f = new Array2DRowRealMatrix(terms.columns(spots.x(), spots.y())).transpose();
    RealVector z = new ArrayRealVector(spots.z());
    LUDecomposition lu = new LUDecomposition(v, 0);
    RealMatrix inverse = lu.getSolver().getInverse();
    RealMatrix normal = f.transpose().multiply(inverse).multiply(f);
    LUDecomposition normalLu = new LUDecomposition(normal, 0);
    RealVector b = normalLu.getSolver().solve(f.transpose().multiply(inverse).operate(z));
    RealVector rest = z.subtract(f.operate(b));
    return logDeterminant(lu) + logDeterminant(normalLu) + rest.dotProduct(inverse.operate(rest));
  }

  private static double logDeterminant(LUDecomposition lu) {
    RealMatrix upper = lu.getU();
    double[] diagonal = new double[upper.getRowDimension()];
    Arrays.setAll(diagonal, i -> Math.log(Math.abs(upper.getEntry(i, i))));
    return Arrays.stream(diagonal).sum();
  }
}
