package dev.fillplane.supply;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Thicknesses of layers from the bottom, worked by hand; all in millimetres. */
class LiftRuleTest {

  private static final double ROUNDING = 1e-9;

  /** 32 with a maximum of 30 is 20 + 12, never 30 + 2 (common practice, no source). */
  @Test
  void theTopIsTwelveOfThirty() {
    assertLayers(3, 30, 32, 20, 12);
    assertLayers(3, 30, 30.5, 18.5, 12);
    assertLayers(3, 30, 42, 30, 12);
  }

  @Test
  void oneLayerIsAllOfIt() {
    assertLayers(3, 30, 30, 30);
    assertLayers(3, 30, 2, 2);
  }

  @Test
  void theTopIsThickerWhereTheLowerOnesAreFull() {
    assertLayers(3, 30, 43, 30, 13);
    assertLayers(3, 30, 58, 30, 28);
    assertLayers(3, 30, 60, 30, 30);
    assertLayers(3, 30, 85, 30, 30, 25);
  }

  @Test
  void lowerLayersShareTheRestEvenly() {
    assertLayers(3, 30, 65, 26.5, 26.5, 12);
  }

  @Test
  void nearTheLeastTheTopKeepsItAndLeavesItToTheLowerOnes() {
    assertLayers(10, 12, 21, 11, 10);
    assertLayers(10, 12, 20, 10, 10);
    assertLayers(10, 12, 24, 12, 12);
    assertLayers(8, 30, 31, 19, 12);
    assertLayers(20, 30, 41, 21, 20);
  }

  /** Too much for one of 10 to 12, too little for two. */
  @Test
  void someDepthsHaveNoLayers() {
    LiftRule rule = new LiftRule(0.015, Sheets.withLifts(0.010, 0.012));
    assertFalse(rule.fits());
    assertArrayEquals(new double[] {0.0075, 0.0075}, rule.thicknesses(), ROUNDING);
    assertTrue(new LiftRule(0.020, Sheets.withLifts(0.010, 0.012)).fits());
    assertTrue(new LiftRule(0.005, Sheets.withLifts(0.010, 0.012)).fits());
  }

  @Test
  void layersKeepToTheSheetWheneverAnyNumberOfThemCan() {
    Random random = new Random(4);
    for (int i = 0; i < 2000; i++) {
      double largest = 0.005 + 0.05 * random.nextDouble();
      double least = largest * random.nextDouble();
      double deepest = largest * 20 * random.nextDouble();
      LiftRule rule = new LiftRule(deepest, Sheets.withLifts(least, largest));
      double[] layers = rule.thicknesses();
      assertEquals(deepest, Arrays.stream(layers).sum(), ROUNDING);
      assertTrue((layers.length - 1) * largest < deepest, "too many");
      boolean any =
          layers.length == 1
              || IntStream.rangeClosed(1, 100)
                  .anyMatch(n -> n * least <= deepest && deepest <= n * largest);
      assertEquals(any, rule.fits());
      if (rule.fits() && layers.length > 1) {
        for (double layer : layers) {
          assertTrue(layer >= least - ROUNDING && layer <= largest + ROUNDING, "" + layer);
        }
      }
    }
  }

  private static void assertLayers(
      double least, double largest, double deepest, double... expected) {
    LiftRule rule = new LiftRule(deepest / 1e3, Sheets.withLifts(least / 1e3, largest / 1e3));
    double[] layers = Arrays.stream(rule.thicknesses()).map(layer -> layer * 1e3).toArray();
    assertArrayEquals(expected, layers, 1e-6);
    assertTrue(rule.fits());
  }
}
