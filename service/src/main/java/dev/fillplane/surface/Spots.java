package dev.fillplane.surface;

/**
 * Measured spots of the floor, as parallel arrays that nobody writes to.
 *
 * @param x plan coordinates
 * @param y plan coordinates
 * @param elevation measured elevations
 * @param variance variance of each measurement; positive
 */
public record Spots(double[] x, double[] y, double[] elevation, double[] variance) {

  /** No spots. */
  public static final Spots NONE =
      new Spots(new double[0], new double[0], new double[0], new double[0]);

  /** Refuses arrays of different length. */
  public Spots {
    if (x.length != y.length || x.length != elevation.length || x.length != variance.length) {
      throw new IllegalArgumentException("spots of different length");
    }
  }

  /** How many there are. */
  public int count() {
    return x.length;
  }
}
