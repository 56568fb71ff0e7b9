package dev.fillplane.surface;

/** The box about some positions; the same in any order of them. */
record Box(double west, double south, double east, double north) {

  /** At least one position. */
  static Box of(double[] x, double[] y) {
    double west = x[0];
    double east = x[0];
    double south = y[0];
    double north = y[0];
    for (int i = 1; i < x.length; i++) {
      west = Math.min(west, x[i]);
      east = Math.max(east, x[i]);
      south = Math.min(south, y[i]);
      north = Math.max(north, y[i]);
    }
    return new Box(west, south, east, north);
  }

  double middleX() {
    return west + (east - west) / 2;
  }

  double middleY() {
    return south + (north - south) / 2;
  }

  /** The longer side. */
  double side() {
    return Math.max(east - west, north - south);
  }
}
