package dev.fillplane.flatness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class HollowBoundTest {

  @Test
  void bowlHasHalfItsBound() {
    double[] bowl = new double[31];
    for (int i = 0; i < bowl.length; i++) {
      bowl[i] = 1e-5 * (i - 15) * (i - 15);
    }
    double gap = new HullGap(31).measure(bowl, 0, 30);
    assertEquals(15 * 15 * 1e-5, gap, 1e-12);
    assertEquals(2 * gap * 29 / 30, new HollowBound(bowl, 30).from(0), 1e-9);
  }

  /** The bound is met where all of the bend is in the middle of the edge. */
  @Test
  void kinkInTheMiddleHasItsBound() {
    double[] kinked = {2, 1, 0, 1, 2};
    assertEquals(2, new HollowBound(kinked, 4).from(0), 1e-9);
    assertEquals(2, new HullGap(5).measure(kinked, 0, 4), 1e-9);
  }

  @Test
  void crestIsNoHollow() {
    assertEquals(0, new HollowBound(new double[] {0, 1, 2, 1, 0}, 4).from(0), 1e-9);
  }

  @Test
  void noWindowHasMore() {
    Random random = new Random(7);
    for (int floor = 0; floor < 200; floor++) {
      double[] heights = invented(random, 3 + random.nextInt(60));
      int steps = 2 + random.nextInt(heights.length - 2);
      HollowBound bound = new HollowBound(heights, steps);
      HullGap window = new HullGap(steps + 1);
      for (int first = 0; first + steps < heights.length; first++) {
        double gap = window.measure(heights, first, first + steps);
        assertTrue(gap <= bound.from(first), "floor " + floor + ", window " + first);
      }
    }
  }

  /** Rough or smooth, sloped. */
  private static double[] invented(Random random, int samples) {
    double[] heights = new double[samples];
    double roughness = Math.pow(10, -2 - 3 * random.nextDouble());
    double wave = 0.05 + 0.3 * random.nextDouble();
    double slope = 0.01 * random.nextGaussian();
    for (int i = 0; i < samples; i++) {
      heights[i] = slope * i + 0.005 * Math.sin(wave * i) + roughness * random.nextGaussian();
    }
    return heights;
  }
}
