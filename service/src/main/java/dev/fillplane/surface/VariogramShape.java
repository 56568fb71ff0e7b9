package dev.fillplane.surface;

/**
 * How the likeness of two spots fades with their distance {@code h}: the covariance is {@code sill
 * * rho(h / a)}, with {@code a} the range of the {@link Variogram}. Only the spherical shape is 0
 * from {@code a} on; the others fade without end. Source of the formulas: Chiles and Delfiner,
 * Geostatistics, 2nd edition, section 2.5.1 (from memory).
 */
public enum VariogramShape {
  /** {@code rho(t) = 1 - 1.5 t + 0.5 t^3} up to {@code t = 1}, then 0. */
  SPHERICAL,
  /** {@code rho(t) = exp(-t)}. */
  EXPONENTIAL,
  /** {@code rho(t) = exp(-t^2)}. */
  GAUSSIAN,
  /** {@code rho(t) = (1 + sqrt(3) t) exp(-sqrt(3) t)}. */
  MATERN_3_2
}
