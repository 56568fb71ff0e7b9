package dev.fillplane.flatness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ProfileGapTest {

  /**
   * Heights from the published worksheet named in the file; the gap and its contacts derived, two
   * independent algorithms agreed. The mid-ordinate of a 2.4 m chord of the same line is 3.9495 mm:
   * it counts crests too and is not a gap.
   */
  @Test
  void publishedLine() throws IOException {
    for (double edge : new double[] {1.8, 3.0}) {
      ProfileGap gap = Straightedge.gap(line0(), 0.3, edge);
      assertEquals(1.5240e-3, gap.gap(), 0.00005e-3);
      assertPlaces(4, 6, 8, gap);
    }
  }

  @Test
  void hollowBetweenTwoRidges() {
    assertGap(0.004, 0, 2, 4, 0, -0.002, -0.004, -0.002, 0);
  }

  @Test
  void contactsOfDifferentHeight() {
    assertGap(0.003, 0, 1, 2, 0.002, 0, 0.004);
  }

  @Test
  void overhangDoesNotCount() {
    assertGap(0.001, 0, 1, 2, 0, -0.001, 0, -0.05);
  }

  @Test
  void crestPlaneAndSinglePointHaveNoGap() {
    assertGap(0, 0, 0, 0, 0, 0.003, 0.004, 0.003, 0);
    assertGap(0, 0, 0, 0, 0, 0, 0, 0);
    assertGap(0, 0, 0, 0, 1);
    assertGap(0, 0, 0, 0);
  }

  @Test
  void edgeShorterThanTheHollowSeesOnlyItsPart() {
    double[] heights = {0.008, 0.002, 0, 0.002, 0.008};
    assertEquals(0.002, Straightedge.gap(heights, 0.5, 1.0).gap(), 1e-15);
    assertEquals(0.008, Straightedge.gap(heights, 0.5, 2.0).gap(), 1e-15);
  }

  @Test
  void eachWindowAgreesWithThePlainDefinition() {
    Random random = new Random(7);
    for (int profile = 0; profile < 200; profile++) {
      double[] heights = profile(random, 40, profile % 2 * 0.0003);
      HullGap window = new HullGap(41);
      for (int first = 0; first < heights.length; first++) {
        int last = Math.min(heights.length - 1, first + random.nextInt(31));
        assertEquals(plainGap(heights, first, last), window.measure(heights, first, last), 1e-12);
        assertReached(heights, window.result());
      }
    }
  }

  @Test
  void refusesLengthsThatAreNone() {
    double[] heights = {0, 1, 2};
    assertThrows(IllegalArgumentException.class, () -> Straightedge.gap(heights, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> Straightedge.gap(heights, 1, Double.NaN));
  }

  /** The definition: largest depth of any sample under any chord within the window, O(n^3). */
  private static double plainGap(double[] heights, int first, int last) {
    double largest = 0;
    for (int from = first; from <= last; from++) {
      for (int to = from + 2; to <= last; to++) {
        for (int at = from + 1; at < to; at++) {
          largest = Math.max(largest, below(heights, from, at, to));
        }
      }
    }
    return largest;
  }

  private static double below(double[] heights, int from, int at, int to) {
    double share = (at - from) / (double) (to - from);
    return heights[from] + share * (heights[to] - heights[from]) - heights[at];
  }

  private static void assertReached(double[] heights, ProfileGap gap) {
    if (gap.gap() > 0) {
      assertEquals(gap.gap(), below(heights, gap.from(), gap.at(), gap.to()), 1e-12);
    }
  }

  /** A walk of steps that repeat, so that points on one line occur; or with noise on them. */
  private static double[] profile(Random random, int samples, double noise) {
    double[] heights = new double[samples];
    for (int i = 1; i < samples; i++) {
      heights[i] = heights[i - 1] + (random.nextInt(5) - 2) * 0.001;
      heights[i] += noise * random.nextGaussian();
    }
    return heights;
  }

  private static void assertGap(double gap, int from, int at, int to, double... heights) {
    ProfileGap found = Straightedge.gap(heights, 0.5, 5);
    assertEquals(gap, found.gap(), 1e-15);
    assertPlaces(from, at, to, found);
  }

  private static void assertPlaces(int from, int at, int to, ProfileGap gap) {
    assertEquals(from + " " + at + " " + to, gap.from() + " " + gap.at() + " " + gap.to());
  }

  private static double[] line0() throws IOException {
    try (InputStream in = ProfileGapTest.class.getResourceAsStream("profile-line-0.csv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .mapToDouble(line -> Double.parseDouble(line) / 1000)
          .toArray();
    }
  }
}
