package dev.fillplane.surface;

/** The floor between the readings. Immutable and safe to share. */
public interface Surface {

  /** The most likely elevation of the floor at a position; finite everywhere. */
  double elevation(double x, double y);

  /** Standard deviation of the floor (not of a reading) about {@link #elevation}. */
  double deviation(double x, double y);
}
