package dev.fillplane.surface;

/** The trend under the variation of a floor. */
public enum Drift {
  /** A constant. */
  NONE,
  /** A plane. */
  LINEAR
}
