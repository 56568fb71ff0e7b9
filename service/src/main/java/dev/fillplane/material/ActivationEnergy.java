package dev.fillplane.material;

/**
 * How strongly setting answers to temperature, in J/mol, after Arrhenius ({@code k ~ exp(-Ea / R
 * T)}, the equivalent age of ASTM C1074, constants from memory).
 *
 * <p>Levellers are often blends of Portland cement, calcium aluminate cement and calcium sulphate.
 * These do not follow the factors of Portland cement, and calcium aluminate alone is not even
 * monotonic: the times of the sheet govern. Between two stated times the energy is that which joins
 * them.
 */
public final class ActivationEnergy {

  /** Of Portland cement without admixtures: 40 to 45 kJ/mol (ASTM C1074, from memory). */
  public static final double USUAL = 40_000;

  /** Less is hardly an answer to temperature at all (own choice). */
  static final double LEAST = 10_000;

  /** More than a factor of 8 for 10 K (own choice). */
  static final double MOST = 150_000;

  /** Molar gas constant in J/mol/K. */
  public static final double GAS_CONSTANT = 8.314;

  /** 0 C in kelvin. */
  public static final double KELVIN = 273.15;

  private ActivationEnergy() {}

  /**
   * The energy that joins two times; negative where the warmer one is longer. The temperatures in C
   * differ, the times are positive.
   */
  static double between(StatedTime one, StatedTime other) {
    double inverse = 1 / (one.workingTimeAt() + KELVIN) - 1 / (other.workingTimeAt() + KELVIN);
    return GAS_CONSTANT * Math.log(one.workingTime() / other.workingTime()) / inverse;
  }

  static boolean allows(double energy) {
    return LEAST <= energy && energy <= MOST;
  }
}
