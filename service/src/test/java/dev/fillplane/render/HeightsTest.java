package dev.fillplane.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.fillplane.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

class HeightsTest {

  private static final double INCH = 0.0254;
  private final Heights metric = new Heights(UnitSystem.METRIC);
  private final Heights us = new Heights(UnitSystem.US);

  @Test
  void inchesInLowestTerms() {
    assertEquals("3/16", us.bare(3 * INCH / 16));
    assertEquals("1/2", us.bare(8 * INCH / 16));
    assertEquals("1 1/4", us.bare(1.25 * INCH));
    assertEquals("2", us.bare(1.98 * INCH));
    assertEquals("-1 1/8 in", us.full(-1.125 * INCH));
    assertEquals("0", us.bare(-0.01 * INCH));
  }

  @Test
  void millimetres() {
    assertEquals("13", metric.bare(0.0126));
    assertEquals("0", metric.bare(-0.0004));
    assertEquals("2.5 mm", metric.elevation(0.00249));
  }

  @Test
  void volumesAndSlopes() {
    assertEquals("812 L", metric.volume(0.8121));
    assertEquals("28.7 cu ft", us.volume(0.8121));
    assertEquals("-0.3 mm/m", metric.slope(-0.0003));
    assertEquals("0.006 in/ft", us.slope(0.0005));
  }

  @Test
  void scaleBarsAreRound() {
    assertEquals(2, ScaleBar.length(80));
    assertEquals(0.2, ScaleBar.length(600));
    assertEquals(20, ScaleBar.length(9));
  }

  @Test
  void numbersOfSvg() {
    assertEquals("12", Markup.number(12));
    assertEquals("-0.05", Markup.number(-0.0532));
    assertEquals("3.5", Markup.number(3.499));
    assertEquals("0", Markup.number(-0.001));
    assertThrows(IllegalArgumentException.class, () -> Markup.number(Double.NaN));
  }
}
