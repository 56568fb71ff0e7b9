package dev.fillplane.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The equations that every adjustment is solved by, on the linear regressions of the NIST
 * Statistical Reference Datasets. Norris: certified values recomputed in exact arithmetic. Longley:
 * certified values as quoted in public test suites, data from R's data sets in the units of NIST.
 */
class NistRegressionTest {

  private static final double SHARE = 1e-6;

  private static final class Regression {

    private final double[] coefficients;
    private final double[] errors;
    private final double deviation;
    private final double explained;
    private final double left;
    private final double fisher;

    /** Each row is the value and what it is regressed on. */
    Regression(List<double[]> rows) {
      int n = rows.get(0).length;
      NormalEquations equations = new NormalEquations(n);
      rows.forEach(row -> equations.observe(regressors(row), row[0], 1));
      equations.solve();
      coefficients = new double[n];
      Arrays.setAll(coefficients, equations::value);
      double squares = 0;
      for (double[] row : rows) {
        double off = row[0];
        for (int i = 0; i < n; i++) {
          off -= coefficients[i] * regressors(row)[i];
        }
        squares += off * off;
      }
      double mean = rows.stream().mapToDouble(row -> row[0]).average().orElseThrow();
      double total = rows.stream().mapToDouble(row -> (row[0] - mean) * (row[0] - mean)).sum();
      left = squares;
      explained = total - squares;
      fisher = explained / (n - 1) / (squares / (rows.size() - n));
      deviation = Math.sqrt(squares / (rows.size() - n));
      errors = new double[n];
      Arrays.setAll(errors, i -> deviation * Math.sqrt(equations.cofactor(i, i)));
    }
  }

  private static double[] regressors(double[] row) {
    double[] all = row.clone();
    all[0] = 1;
    return all;
  }

  private static Regression regress(String file) throws IOException {
    try (InputStream in = NistRegressionTest.class.getResourceAsStream(file);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return new Regression(
          lines
              .lines()
              .filter(line -> !line.startsWith("#"))
              .map(line -> Arrays.stream(line.split(",", -1)).mapToDouble(Double::parseDouble))
              .map(java.util.stream.DoubleStream::toArray)
              .toList());
    }
  }

  private static void check(double[] certified, double[] found) {
    assertEquals(certified.length, found.length);
    for (int i = 0; i < certified.length; i++) {
      assertEquals(certified[i], found[i], SHARE * Math.abs(certified[i]), "B" + i);
    }
  }

  @Test
  void norris() throws IOException {
    Regression norris = regress("nist-norris.csv");
    check(new double[] {-0.262323073774029, 1.00211681802045}, norris.coefficients);
    check(new double[] {0.232818234301152, 0.429796848199937E-03}, norris.errors);
    assertEquals(0.884796396144373, norris.deviation, SHARE);
    check(
        new double[] {4255954.13232369, 26.6173985294224, 5436385.54079785},
        new double[] {norris.explained, norris.left, norris.fisher});
    double share = norris.explained / (norris.explained + norris.left);
    assertEquals(0.999993745883712, share, SHARE);
  }

  @Test
  void longley() throws IOException {
    Regression longley = regress("nist-longley.csv");
    check(
        new double[] {
          -3482258.63459582,
          15.0618722713733,
          -0.0358191792925910,
          -2.02022980381683,
          -1.03322686717359,
          -0.0511041056535807,
          1829.15146461355
        },
        longley.coefficients);
    check(
        new double[] {
          890420.383607373,
          84.9149257747669,
          0.0334910077722432,
          0.488399681651699,
          0.214274163161675,
          0.226073200069370,
          455.478499142212
        },
        longley.errors);
    assertEquals(304.854073561965, longley.deviation, SHARE * 304);
    check(
        new double[] {836424.055505915, 330.285339234588},
        new double[] {longley.left, longley.fisher});
    double share = longley.explained / (longley.explained + longley.left);
    assertEquals(0.995479004577296, share, SHARE);
  }

  /** Plane through five points of an engineering forum thread; reference computed with NumPy. */
  @Test
  void planeThroughFivePoints() {
    Regression plane =
        new Regression(
            List.of(
                new double[] {1.1, 11.5, 7},
                new double[] {1.03, 18.5, 6.9},
                new double[] {1.02, 4.5, 13},
                new double[] {1.03, 25.5, 30},
                new double[] {1.02, 11.5, 37.5}));
    double[] found = plane.coefficients;
    assertEquals(1.05966367, found[0], 1e-8);
    assertEquals(2.81689544e-04, found[1], 1e-12);
    assertEquals(-1.25486366e-03, found[2], 1e-11);
    assertEquals(0.0034163040, plane.left, 1e-10);
  }

  /** The least-squares plane of the small kriging case; computed with two general libraries. */
  @Test
  void planeOfTheKrigingCase() {
    Regression plane =
        new Regression(
            List.of(
                new double[] {3, 0, 0},
                new double[] {7, 4, 0},
                new double[] {5, 0, 3},
                new double[] {12, 4, 3},
                new double[] {9, 2, 1},
                new double[] {6, 1, 2}));
    check(new double[] {2.90814196242, 1.39665970772, 1.02087682672}, plane.coefficients);
  }
}
