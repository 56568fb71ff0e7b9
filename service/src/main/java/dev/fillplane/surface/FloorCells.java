package dev.fillplane.surface;

/**
 * The cells of a room, each clipped to it, as parallel arrays that nobody writes to.
 *
 * @param x centroids
 * @param y centroids
 * @param area areas on plan; positive
 * @param elevation mean elevations of the piecewise-linear floor
 */
public record FloorCells(double[] x, double[] y, double[] area, double[] elevation) {

  /** How many there are. */
  public int count() {
    return x.length;
  }
}
