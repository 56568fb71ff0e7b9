package dev.fillplane.surface;

/**
 * Points of the sampled floor, as parallel arrays that nobody writes to.
 *
 * @param x plan coordinates
 * @param y plan coordinates
 * @param elevation elevation of the floor there
 */
public record FloorPoints(double[] x, double[] y, double[] elevation) {

  /** How many there are. */
  public int count() {
    return x.length;
  }
}
