package dev.fillplane.surface;

/**
 * The cells of a room, each clipped to it, as parallel arrays that nobody writes to. Positions are
 * local.
 *
 * @param cell number of the cell in the lattice
 * @param x centroids
 * @param y centroids
 * @param area areas on plan; positive
 * @param elevation mean elevations of the piecewise-linear floor
 */
record RoomCells(int[] cell, double[] x, double[] y, double[] area, double[] elevation) {

  int count() {
    return cell.length;
  }

  /** The same on plan. */
  FloorCells onPlan(Lattice lattice) {
    double[] planX = x.clone();
    double[] planY = y.clone();
    for (int i = 0; i < planX.length; i++) {
      planX[i] += lattice.originX();
      planY[i] += lattice.originY();
    }
    return new FloorCells(planX, planY, area, elevation);
  }
}
