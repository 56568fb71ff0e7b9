package dev.fillplane.surface;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/** Floors for the tests of this package; all invented unless a source is named. */
final class Floors {

  /** Variance of a reading with a deviation of 1 mm. */
  static final double READING = 1e-6;

  private Floors() {}

  static Spots spots(double[] x, double[] y, DoubleBinaryOperator floor) {
    double[] z = new double[x.length];
    Arrays.setAll(z, i -> floor.applyAsDouble(x[i], y[i]));
    return spots(x, y, z);
  }

  static Spots spots(double[] x, double[] y, double[] z) {
    double[] variance = new double[x.length];
    Arrays.fill(variance, READING);
    return new Spots(x, y, z, variance);
  }

  /** Spots spread at random over a 10 x 6 m room. */
  static Spots scattered(int count, long seed, DoubleBinaryOperator floor) {
    Random random = new Random(seed);
    double[] x = random.doubles(count, 0, 10).toArray();
    double[] y = random.doubles(count, 0, 6).toArray();
    return spots(x, y, floor);
  }

  /** A bumpy floor of some millimetres. */
  static double bumpy(double x, double y) {
    return 0.004 * Math.sin(1.3 * x + 0.4) * Math.cos(0.9 * y)
        + 0.002 * Math.sin(2.1 * y)
        + 0.003 * x;
  }

  /** Spots moved on plan: turned by {@code angle}, then shifted. */
  static Spots moved(Spots spots, double angle, double shiftX, double shiftY) {
    double[] x = new double[spots.count()];
    double[] y = new double[spots.count()];
    for (int i = 0; i < x.length; i++) {
      x[i] = spots.x()[i] * Math.cos(angle) - spots.y()[i] * Math.sin(angle) + shiftX;
      y[i] = spots.x()[i] * Math.sin(angle) + spots.y()[i] * Math.cos(angle) + shiftY;
    }
    return new Spots(x, y, spots.elevation(), spots.variance());
  }

  /** Elevations drawn from a Gaussian field with readings of their variance, by Commons Math. */
  static Spots drawn(Spots places, VariogramShape shape, double sill, double range, long seed) {
    int n = places.count();
    RealMatrix covariance = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double h = Math.hypot(places.x()[i] - places.x()[j], places.y()[i] - places.y()[j]);
        covariance.setEntry(i, j, sill * plainRho(shape, h / range));
      }
      covariance.addToEntry(i, i, places.variance()[i]);
    }
    Random random = new Random(seed);
    double[] normals = new double[n];
    Arrays.setAll(normals, i -> random.nextGaussian());
    double[] z = new CholeskyDecomposition(covariance, 1e-9, 1e-30).getL().operate(normals);
    return new Spots(places.x(), places.y(), z, places.variance());
  }

  /** The formulas of {@link VariogramShape} once more. */
  static double plainRho(VariogramShape shape, double t) {
    return switch (shape) {
      case SPHERICAL -> t < 1 ? 1 - (1.5 * t - 0.5 * Math.pow(t, 3)) : 0;
      case EXPONENTIAL -> 1 / Math.exp(t);
      case GAUSSIAN -> 1 / Math.exp(Math.pow(t, 2));
      case MATERN_3_2 -> (1 + Math.sqrt(3) * t) / Math.exp(Math.sqrt(3) * t);
    };
  }

  static SurfaceWish given(VariogramShape shape, double nugget, double sill, double range) {
    return given(Drift.NONE, shape, nugget, sill, range);
  }

  static SurfaceWish given(
      Drift drift, VariogramShape shape, double nugget, double sill, double range) {
    return new SurfaceWish(
        Optional.empty(), drift, Optional.of(new Variogram(shape, nugget, sill, range)));
  }

  /** The rows of a table of numbers, without its heading. */
  static double[][] table(String name) {
    try (InputStream in = Floors.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(line -> Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray())
          .toArray(double[][]::new);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static double[] column(double[][] table, int column) {
    return Arrays.stream(table).mapToDouble(row -> row[column]).toArray();
  }
}
