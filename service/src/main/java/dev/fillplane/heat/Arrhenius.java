package dev.fillplane.heat;

/**
 * How fast a mix sets against a temperature of reference: equivalent age of ASTM C1074, {@code
 * exp[-Ea/R (1/T - 1/Tr)]} with T in kelvin.
 *
 * <p>Ea 40 kJ/mol, of Portland cement without admixtures (ASTM C1074, from memory). Levellers are
 * often blends, so this is an estimate.
 */
public final class Arrhenius {

  /** Activation energy in J/mol. */
  public static final double ACTIVATION_ENERGY = 40_000;

  private static final double GAS_CONSTANT = 8.314;
  private static final double KELVIN = 273.15;

  private Arrhenius() {}

  /** Rate at {@code temperature} as a multiple of that at {@code reference}; above -273 C. */
  public static double rate(double temperature, double reference) {
    double inverse = 1 / (temperature + KELVIN) - 1 / (reference + KELVIN);
    return Math.exp(-ACTIVATION_ENERGY / GAS_CONSTANT * inverse);
  }
}
