package dev.fillplane.flatness;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.Test;

class FNumbersTest {

  /**
   * Heights from the published worksheet named in the file; curvatures and differences derived, the
   * numbers by the formula from memory.
   */
  @Test
  void publishedLine() throws IOException {
    double[] heights = line0();
    double[] q = FNumbers.curvatures(heights);
    assertEquals(12, q.length);
    assertEquals(-0.4212e-3, StatUtils.mean(q), 0.00005e-3);
    assertEquals(1.2012e-3, Math.sqrt(StatUtils.variance(q)), 0.00005e-3);
    double[] z = {4.547e-3, 2.820e-3, -1.422e-3, -7.010e-3};
    assertArrayEquals(z, FNumbers.differences(heights), 1e-9);
    assertEquals(28.84, FNumbers.flatness(heights).orElseThrow().value(), 0.005);
    assertEquals(20.21, FNumbers.levelness(heights).orElseThrow().value(), 0.005);
  }

  @Test
  void shortLinesHaveNone() {
    assertTrue(FNumbers.flatness(new double[3]).isEmpty());
    assertTrue(FNumbers.levelness(new double[11]).isEmpty());
    assertEquals(2, FNumbers.levelness(new double[12]).orElseThrow().count());
  }

  @Test
  void noSpreadIsCapped() {
    assertEquals(FNumbers.MOST, FNumbers.flatness(new double[12]).orElseThrow().value());
    assertEquals(FNumbers.MOST, FNumbers.levelness(new double[12]).orElseThrow().value());
  }

  /** The two forms of the rule (from memory) agree: F = Fj Fk sqrt((rj+rk)/(rk Fj^2 + rj Fk^2)). */
  @Test
  void bothFormsOfTheCombinationAgree() {
    double combined = combined(new FNumber(30, 40), new FNumber(20, 10));
    double other = 30 * 20 * Math.sqrt(50.0 / (10 * 30 * 30 + 40 * 20 * 20));
    assertEquals(other, combined, 1e-12);
    assertEquals(26.832816, combined, 1e-6);
    assertEquals(25, combined(new FNumber(25, 7)), 1e-12);
    assertEquals(OptionalDouble.empty(), FNumbers.combined(List.of()));
  }

  /** Sections by area, from memory: 1 / F^2 = (30 / 20^2 + 10 / 40^2) / 40. */
  @Test
  void sectionsAreWeightedByArea() {
    double together = FNumbers.combined(List.of(20.0, 40.0), List.of(30.0, 10.0)).orElseThrow();
    assertEquals(22.188008, together, 1e-6);
    assertEquals(OptionalDouble.empty(), FNumbers.combined(List.of(), List.of()));
  }

  @Test
  void reversingALineChangesNothing() {
    Random random = new Random(11);
    for (int i = 0; i < 50; i++) {
      double[] heights = random.doubles(20, -0.005, 0.005).toArray();
      double[] back = reversed(heights);
      double edge = 0.6 + 4 * random.nextDouble();
      assertEquals(value(FNumbers.flatness(heights)), value(FNumbers.flatness(back)), 1e-9);
      assertEquals(value(FNumbers.levelness(heights)), value(FNumbers.levelness(back)), 1e-9);
      assertEquals(gap(heights, edge).gap(), gap(back, edge).gap(), 1e-12);
    }
  }

  /** Along a line that wanders, shortened step by step, also below the contacts of the longest. */
  @Test
  void shorterEdgeNeverFindsMore() {
    Random random = new Random(12);
    for (int i = 0; i < 50; i++) {
      double[] heights = random.doubles(30, -0.005, 0.005).toArray();
      Arrays.parallelPrefix(heights, Double::sum);
      ProfileGap before = gap(heights, 3.0);
      assertTrue(before.to() - before.from() > 3, "contacts " + before);
      for (int steps = 9; steps > 0; steps--) {
        ProfileGap shorter = gap(heights, 0.3 * steps);
        assertTrue(shorter.gap() <= before.gap(), steps + " steps");
        before = shorter;
      }
    }
  }

  @Test
  void whereTheyDoNotApply() {
    assertEquals(Optional.empty(), FNumberRules.against(0.3, 12));
    assertEquals(Optional.empty(), FNumberRules.against(0.3048, 12));
    assertEquals(Optional.empty(), FNumberRules.against(0.3029, 12));
    assertTrue(FNumberRules.against(0.309, 40).orElseThrow().contains("12 in"));
    assertTrue(FNumberRules.against(0.29, 40).orElseThrow().contains("12 in"));
    assertTrue(FNumberRules.against(0.3, 11).orElseThrow().contains("11 ft"));
    assertTrue(FNumberRules.isTooSmall(OptionalDouble.of(29)));
    assertEquals(false, FNumberRules.isTooSmall(OptionalDouble.of(320 * 0.3048 * 0.3048)));
    assertEquals(false, FNumberRules.isTooSmall(OptionalDouble.empty()));
  }

  private static double combined(FNumber... numbers) {
    return FNumbers.combined(Arrays.asList(numbers)).orElseThrow();
  }

  private static double value(Optional<FNumber> number) {
    return number.orElseThrow().value();
  }

  private static ProfileGap gap(double[] heights, double edge) {
    return Straightedge.gap(heights, 0.3, edge);
  }

  private static double[] reversed(double[] heights) {
    double[] back = new double[heights.length];
    Arrays.setAll(back, i -> heights[heights.length - 1 - i]);
    return back;
  }

  private static double[] line0() throws IOException {
    try (InputStream in = FNumbersTest.class.getResourceAsStream("profile-line-0.csv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .mapToDouble(line -> Double.parseDouble(line) / 1000)
          .toArray();
    }
  }
}
