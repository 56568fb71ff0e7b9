package dev.fillplane.material;

/** Powder and water become fresh underlayment: nothing is lost, no air stays in. */
final class MassBalance {

  /** Density of mix water. */
  static final double WATER_DENSITY = 1000;

  private MassBalance() {}

  /** Volume of fresh underlayment; the masses and the density positive. */
  static double volume(double bagMass, double water, double wetDensity) {
    return (bagMass + WATER_DENSITY * water) / wetDensity;
  }

  /** Density of the fresh underlayment; the masses and the volume positive. */
  static double wetDensity(double bagMass, double water, double yield) {
    return (bagMass + WATER_DENSITY * water) / yield;
  }
}
