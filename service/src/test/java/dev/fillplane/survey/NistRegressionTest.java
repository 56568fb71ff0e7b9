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
  }
}
