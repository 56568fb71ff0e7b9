package dev.fillplane.surface;

import java.util.Arrays;

/**
 * How unsure the floor is, on coarse square cells: the standard deviation in the middle of the part
 * of each cell that lies in a room. Row by row from the south-west; the array is not written to.
 */
public record Deviations(
    double originX, double originY, double cell, int columns, int rows, double[] deviations) {

  /** Marks a cell that no room reaches into. */
  public static final double OUTSIDE = Double.NEGATIVE_INFINITY;

  /** Reads them off a spread before anything is read on top. */
  public static Deviations of(FloorNodes nodes, VolumeSpread spread) {
    FloorNodes.Frame frame = nodes.frame();
    double[] deviations = new double[frame.columns() * frame.rows()];
    Arrays.fill(deviations, OUTSIDE);
    for (int i = 0; i < nodes.count(); i++) {
      int cell = nodes.cell()[i];
      deviations[cell] = Math.max(deviations[cell], spread.deviation(i));
    }
    return new Deviations(
        frame.originX(), frame.originY(), frame.cell(), frame.columns(), frame.rows(), deviations);
  }
}
