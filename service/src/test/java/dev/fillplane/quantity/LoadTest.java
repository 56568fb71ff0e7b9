package dev.fillplane.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadTest {

  /**
   * Derived: kg/m3, psf for an inch, kPa for a centimetre; kg/m2 for a millimetre is density /
   * 1000.
   */
  @ParameterizedTest
  @CsvSource({"1900, 9.88, 0.186", "2000, 10.40, 0.196", "2100, 10.92, 0.206"})
  void ofAnInchAndACentimetre(double density, double psf, double kilopascal) {
    assertEquals(psf, Load.ofMassPerArea(density * 0.0254).in(UnitSystem.US), 0.01);
    assertEquals(kilopascal, Load.ofMassPerArea(density * 0.01).in(UnitSystem.METRIC), 0.0005);
  }

  /** 47.88 Pa are a pound of force on a square foot (NIST SP 811). */
  @Test
  void poundsOnASquareFoot() {
    assertEquals(47.88026, Load.ofPoundsPerSquareFoot(1).si(), 1e-5);
  }

  @Test
  void overIsMoreThanTheLimit() {
    Amount ten = Load.ofPoundsPerSquareFoot(10);
    assertFalse(Load.isOver(ten, ten));
    assertTrue(Load.isOver(Load.ofPoundsPerSquareFoot(10.01), ten));
  }
}
