package dev.fillplane.heat;

import static dev.fillplane.material.ActivationEnergy.GAS_CONSTANT;
import static dev.fillplane.material.ActivationEnergy.KELVIN;

/**
 * How fast a mix sets against a temperature of reference: equivalent age of ASTM C1074, {@code
 * exp[-Ea/R (1/T - 1/Tr)]} with T in kelvin. An estimate between the times that a sheet states.
 *
 * @see dev.fillplane.material.ActivationEnergy
 */
public final class Arrhenius {

  private Arrhenius() {}

  /**
   * Rate at {@code temperature} as a multiple of that at {@code reference}; above -273 C.
   *
   * @param activationEnergy in J/mol
   */
  public static double rate(double temperature, double reference, double activationEnergy) {
    double inverse = 1 / (temperature + KELVIN) - 1 / (reference + KELVIN);
    return Math.exp(-activationEnergy / GAS_CONSTANT * inverse);
  }
}
