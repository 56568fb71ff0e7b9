package dev.fillplane.web.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

class AmountTextTest {

  @Test
  void readAsOnSite() {
    assertEquals("25 kg", metric(25, Dimension.MASS));
    assertEquals("8.9 mm", metric(0.00886, Dimension.HEIGHT));
    assertEquals("750 mm", metric(0.75, Dimension.HEIGHT));
    assertEquals("7.6 min", metric(455, Dimension.TIME));
    assertEquals("100 m2", metric(100, Dimension.AREA));
    assertEquals("0.01 m2", metric(0.01, Dimension.AREA));
    assertEquals("0 mm", metric(-1e-9, Dimension.HEIGHT));
  }

  /** Heights in inches are marks of a tape; below its smallest mark they are decimals. */
  @Test
  void inchesAreFractions() {
    assertEquals("29 1/2 in", us(0.75, Dimension.HEIGHT));
    assertEquals("1/8 in", us(0.0032, Dimension.HEIGHT));
    assertEquals("3/8 in", us(0.009525, Dimension.HEIGHT));
    assertEquals("1 in", us(0.0254, Dimension.HEIGHT));
    assertEquals("-1/4 in", us(-0.00635, Dimension.HEIGHT));
    assertEquals("1/16 in", us(0.0015875, Dimension.HEIGHT));
    assertEquals("0.02 in", us(0.0005, Dimension.HEIGHT));
    assertEquals("0 in", us(0, Dimension.HEIGHT));
    Amount stand = Amount.of(0.75, Dimension.HEIGHT);
    assertEquals("29.5 in", AmountText.exact(stand, UnitSystem.US));
  }

  /** 1 kg/m2 is 9.80665 Pa; 10 lb/ft2 is 478.8 Pa, 48.8 kg/m2 (derived). */
  @Test
  void loadsAreMassesOnAnArea() {
    assertEquals("20 kg per m2 (0.2 kPa)", metric(196.133, Dimension.SURFACE_LOAD));
    assertEquals("49 kg per m2 (0.48 kPa)", metric(478.8, Dimension.SURFACE_LOAD));
    assertEquals("1.5 kg per m2 (0.01 kPa)", metric(14.7, Dimension.SURFACE_LOAD));
    assertEquals("10 lb per sq ft", us(478.8, Dimension.SURFACE_LOAD));
  }

  private static String metric(double si, Dimension dimension) {
    return AmountText.of(Amount.of(si, dimension), UnitSystem.METRIC);
  }

  private static String us(double si, Dimension dimension) {
    return AmountText.of(Amount.of(si, dimension), UnitSystem.US);
  }
}
