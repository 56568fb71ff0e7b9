package dev.fillplane.target;

/**
 * A plane over the plan.
 *
 * @param elevation elevation at the plan origin
 * @param slopeX rise along x
 * @param slopeY rise along y
 */
public record Plane(double elevation, double slopeX, double slopeY) {

  /** A level plane. */
  public static Plane level(double elevation) {
    return new Plane(elevation, 0, 0);
  }

  /** Its elevation at a position. */
  public double at(double x, double y) {
    return elevation + slopeX * x + slopeY * y;
  }

  /** Its steepest slope. */
  public double slope() {
    return Math.hypot(slopeX, slopeY);
  }
}
