package dev.fillplane.bench;

import dev.fillplane.flatness.Straightedge;

/** A straightedge of 3 m on a floor of waves that are reckoned at each place. */
final class EdgeCase {

  private static final double WIDTH = 10;
  private static final double LENGTH = 6;
  private static final double EDGE = 3;
  private static final double STEP = 0.1;

  private final InventedFloor floor = new InventedFloor(WIDTH, LENGTH, 1);

  double largestGap() {
    return Straightedge.largestGap(floor.polygons(), EdgeCase::elevation, EDGE).orElseThrow().gap();
  }

  private static double elevation(double x, double y) {
    return 0.004 * Math.sin(1.3 * x) * Math.cos(1.9 * y) + 0.001 * x;
  }

  double[][] told() {
    return new double[][] {{WIDTH}, {LENGTH}, {EDGE}, {STEP}};
  }
}
