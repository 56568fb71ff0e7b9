package dev.fillplane.target;

/** What is sought of a plane, in the units of {@link PlaneScale}. */
enum Unknown {
  /** Elevation at the centroid. */
  ELEVATION,
  /** Rise along x over the reach. */
  RISE_X,
  /** Rise along y over the reach. */
  RISE_Y,
  /** No smaller than the slope. */
  STEEPNESS,
  /** By how much fixed heights and ceilings are missed. */
  EXCESS,
  /** No smaller than the price. */
  PRICE;

  /** Its value in a solution. */
  double in(double[] solution) {
    return solution[ordinal()];
  }

  /** How many there are. */
  static int count() {
    return PRICE.ordinal() + 1;
  }
}
