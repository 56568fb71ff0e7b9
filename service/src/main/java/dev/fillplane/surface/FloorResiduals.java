package dev.fillplane.surface;

/**
 * Equally likely floors, as their difference from the mean surface: one value for each realisation
 * and cell of a coarse lattice of its own.
 */
public interface FloorResiduals {

  /** How many realisations there are. */
  int count();

  /** The coarse cell in which a position lies, or the nearest; not negative. */
  int cellAt(double x, double y);

  /** Elevation of one realisation above the mean surface, anywhere in a coarse cell. */
  double residual(int realisation, int cell);

  /** Those of all realisations in one coarse cell, in a new array. */
  default double[] residuals(int cell) {
    double[] residuals = new double[count()];
    for (int realisation = 0; realisation < residuals.length; realisation++) {
      residuals[realisation] = residual(realisation, cell);
    }
    return residuals;
  }
}
