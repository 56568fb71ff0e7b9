package dev.fillplane.depth;

import dev.fillplane.surface.FloorPoints;
import dev.fillplane.surface.FloorSample;

/**
 * Where the pour is deepest and the floor highest, and the least depth; each exact for the
 * piecewise-linear floor. Of several places the first from the south-west is told.
 */
record Extremes(Deepest deepest, Highest highest, double minimum) {

  /** Heights nearer than this count as equal. */
  private static final double EQUAL = 1e-9;

  static Extremes of(FloorSample floor, DepthRule rule) {
    FloorPoints points = floor.points();
    double[] depths = new double[points.count()];
    double minimum = Double.POSITIVE_INFINITY;
    for (int i = 0; i < depths.length; i++) {
      depths[i] = rule.at(points.x()[i], points.y()[i], points.elevation()[i]);
      minimum = Math.min(minimum, depths[i]);
    }
    int deep = firstLargest(depths);
    int high = firstLargest(points.elevation());
    return new Extremes(
        new Deepest(points.x()[deep], points.y()[deep], largest(depths)),
        new Highest(points.x()[high], points.y()[high], largest(points.elevation())),
        minimum);
  }

  private static int firstLargest(double[] values) {
    double largest = largest(values);
    int i = 0;
    while (values[i] < largest - EQUAL) {
      i++;
    }
    return i;
  }

  private static double largest(double[] values) {
    double largest = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      largest = Math.max(largest, value);
    }
    return largest;
  }
}
