package dev.fillplane.surface;

/** How the likeness of two spots fades with their distance. */
public enum VariogramShape {
  SPHERICAL,
  EXPONENTIAL,
  GAUSSIAN,
  MATERN_3_2
}
