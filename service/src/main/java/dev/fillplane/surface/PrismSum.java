package dev.fillplane.surface;

/**
 * Sums prisms between a plane and the floor over rings on each of which their distance is linear.
 * Exact: the part below the plane is clipped out and the prism formula (area times mean of the
 * three edges) applied to both parts.
 */
final class PrismSum {

  /** Distances below this are rounding and count as none. */
  private static final double NOTHING = 1e-11;

  private double area;
  private double fillArea;
  private double fillVolume;
  private double cutArea;
  private double cutVolume;

  /** Adds a ring with the depth (plane minus floor) at each of its positions. */
  void add(Ring ring, double[] depth) {
    double ringArea = ring.area();
    area += ringArea;
    double lowest = 0;
    double highest = 0;
    for (double d : depth) {
      lowest = Math.min(lowest, d);
      highest = Math.max(highest, d);
    }
    if (lowest >= -NOTHING && highest <= NOTHING) {
      return;
    }
    double net = volume(ring, depth);
    if (lowest >= 0) {
      fillArea += ringArea;
      fillVolume += net;
    } else if (highest <= 0) {
      cutArea += ringArea;
      cutVolume -= net;
    } else {
      split(ring, depth, ringArea, net);
    }
  }

  private void split(Ring ring, double[] depth, double ringArea, double net) {
    Ring filled = ring.clip(depth);
    double part = filled.size() < 3 ? 0 : filled.area();
    double volume = filled.size() < 3 ? 0 : volume(filled, clipped(depth));
    fillArea += part;
    fillVolume += volume;
    cutArea += ringArea - part;
    cutVolume += volume - net;
  }

  /** The depths at the positions that {@link Ring#clip(double[])} keeps. */
  private static double[] clipped(double[] depth) {
    double[] kept = new double[2 * depth.length];
    int n = 0;
    for (int i = 0; i < depth.length; i++) {
      if (depth[i] >= 0) {
        kept[n++] = depth[i];
      }
      if (depth[i] >= 0 != depth[(i + 1) % depth.length] >= 0) {
        kept[n++] = 0;
      }
    }
    return kept;
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
    if (least > NOTHING) {
      area += side * side;
      fillArea += side * side;
      fillVolume += volume;
    } else if (most < -NOTHING) {
      area += side * side;
      cutArea += side * side;
      cutVolume -= volume;
    } else {
      for (int i = 0; i < 4; i++) {
        // Turned to lie alike: only the shape of a triangle counts.
        Ring triangle = new Ring(new double[] {0, side, side / 2}, new double[] {0, 0, side / 2});
        add(triangle, new double[] {corners[i], corners[(i + 1) % 4], centre});
      }
    }
  }

  /** Integral of a linear function over a ring; only the shape of the ring counts. */
  private static double volume(Ring ring, double[] depth) {
    double[] x = ring.x();
    double[] y = ring.y();
    double six = 0;
    for (int i = 1; i < x.length - 1; i++) {
      double twice = (x[i] - x[0]) * (y[i + 1] - y[0]) - (x[i + 1] - x[0]) * (y[i] - y[0]);
      six += twice * (depth[0] + depth[i] + depth[i + 1]);
    }
    return six / 6;
  }

  Prisms sum() {
    return new Prisms(area, fillArea, fillVolume, cutArea, cutVolume);
  }
}
