package dev.fillplane.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.quantity.UnitSystem;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DepthRampTest {

  /** Lightness of an sRGB colour by IEC 61966-2-1 and CIE 15. */
  private static double lightness(String colour) {
    double[] weights = {0.2126729, 0.7151522, 0.0721750};
    double luminance =
        IntStream.range(0, 3)
            .mapToDouble(
                i -> {
                  int part = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16);
                  double value = part / 255.0;
                  return weights[i]
                      * (value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4));
                })
            .sum();
    return 116 * Math.cbrt(luminance) - 16;
  }

  @Test
  void lightnessFallsInEqualSteps() {
    for (int i = 0; i <= 8; i++) {
      assertEquals(94 - 8 * i, lightness(DepthRamp.colour(i / 8.0)), 0.6, "step " + i);
    }
  }

  @Test
  void classesInMillimetresAreRound() {
    DepthClasses classes = new DepthClasses(UnitSystem.METRIC, 0.001, 0.0131);
    assertEquals("0 to 2 mm", classes.text(0));
    assertEquals("2 to 4 mm", classes.text(1));
    assertEquals("over 12 mm", classes.text(classes.count() - 1));
  }

  @Test
  void classesInInchesAreFractions() {
    DepthClasses classes = new DepthClasses(UnitSystem.US, 0.001, 1.6 * 0.0254);
    assertEquals("0 to 1/4 in", classes.text(0));
    assertEquals("1 1/4 to 1 1/2 in", classes.text(5));
    assertEquals("over 1 1/2 in", classes.text(6));
  }

  @Test
  void theLightestColourIsTheShallowestClassThatOccurs() {
    DepthClasses classes = new DepthClasses(UnitSystem.METRIC, 0.032, 0.041);
    assertEquals("30 to 35 mm", classes.text(classes.first()));
    assertEquals(DepthRamp.colour(0), classes.colour(classes.first()));
    assertEquals(DepthRamp.colour(1), classes.colour(classes.count() - 1));
  }

  @Test
  void nothingToPourIsNoReasonToFail() {
    DepthClasses classes = new DepthClasses(UnitSystem.METRIC, -0.004, -0.001);
    assertEquals(1, classes.count());
    assertTrue(classes.colour(0).matches("#[0-9a-f]{6}"));
  }
}
