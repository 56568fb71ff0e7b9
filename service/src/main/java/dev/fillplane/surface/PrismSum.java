package dev.fillplane.surface;

/**
 * Sums prisms between a plane and the floor over rings on each of which their distance is linear.
 * Exact: the part below the plane is clipped out and the prism formula (area times mean of the
 * three edges) applied to both parts.
 */
final class PrismSum {

  /** Distances below this are rounding and count as none. */
  static final double NOTHING = 1e-11;

  private double area;
  private double fillArea;
  private double fillVolume;
  private double cutArea;
  private double cutVolume;
  private final Fan whole = new Fan();
  private final Fan filled = new Fan();

  /**
   * Adds a ring with the depth (plane minus floor) at each of its positions: the first {@code size}
   * entries of the arrays.
   */
  void add(double[] x, double[] y, double[] depth, int size) {
    whole.begin();
    double lowest = 0;
    double highest = 0;
    for (int i = 0; i < size; i++) {
      whole.add(x[i], y[i], depth[i]);
      lowest = Math.min(lowest, depth[i]);
      highest = Math.max(highest, depth[i]);
    }
    if (lowest < 0 && highest > 0 && (lowest < -NOTHING || highest > NOTHING)) {
      area += whole.area();
      split(x, y, depth, size);
    } else {
      addWhole(lowest, highest, whole.area(), whole.volume());
    }
  }

  /** Adds a part between whose depths 0 does not lie, but for rounding. */
  private void addWhole(double lowest, double highest, double part, double volume) {
    area += part;
    if (lowest >= -NOTHING && highest <= NOTHING) {
      return;
    }
    if (lowest >= 0) {
      fillArea += part;
      fillVolume += volume;
    } else {
      cutArea += part;
      cutVolume -= volume;
    }
  }

  private void split(double[] x, double[] y, double[] depth, int size) {
    filled.addFilled(x, y, depth, size);
    fillArea += filled.area();
    fillVolume += filled.volume();
    cutArea += whole.area() - filled.area();
    cutVolume += filled.volume() - whole.volume();
  }

  /** Adds a part that the plane does not cut; one of an island has a negative area. */
  void addClear(double part, double volume) {
    area += part;
    if (volume > 0 == part > 0) {
      fillArea += part;
      fillVolume += volume;
    } else {
      cutArea += part;
      cutVolume -= volume;
    }
  }

  /** Adds a whole cell by the depths at its corners (anticlockwise) and its centre. */
  void addCell(double[] corners, double centre, double side) {
    double least = centre;
    double most = centre;
    double sum = 0;
    for (double corner : corners) {
      least = Math.min(least, corner);
      most = Math.max(most, corner);
      sum += corner;
    }
    double volume = side * side * (sum / 6 + centre / 3);
    if (least > NOTHING || most < -NOTHING) {
      addClear(side * side, volume);
      return;
    }
    double[] x = {0, side, side / 2};
    double[] y = {0, 0, side / 2};
    for (int i = 0; i < 4; i++) {
      // Turned to lie alike: only the shape of a triangle counts.
      add(x, y, new double[] {corners[i], corners[(i + 1) % 4], centre}, 3);
    }
  }

  Prisms sum() {
    return new Prisms(area, fillArea, fillVolume, cutArea, cutVolume);
  }
}
