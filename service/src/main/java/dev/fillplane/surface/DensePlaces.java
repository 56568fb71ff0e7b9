package dev.fillplane.surface;

import java.util.Arrays;

/**
 * Many spots made ready for a triangulation: in Hilbert order, about the middle of their box, spots
 * at the same x and y as one place of their mean elevation, elevations above the least-squares
 * plane of the places. Parallel arrays that nobody writes to.
 *
 * @param middleX the caller's x of the middle
 * @param middleY the caller's y of the middle
 * @param plane the plane, about the middle
 * @param x of each place, about the middle
 * @param y of each place, about the middle
 * @param z elevation of each place above the plane
 * @param ofSpot the place of each spot, in the caller's order
 * @param variance mean variance of a spot
 */
record DensePlaces(
    double middleX,
    double middleY,
    MeanPlane plane,
    double[] x,
    double[] y,
    double[] z,
    int[] ofSpot,
    double variance) {

  static DensePlaces of(Spots spots) {
    Box box = Box.of(spots.x(), spots.y());
    int[] order = HilbertOrder.of(spots.x(), spots.y(), spots.elevation());
    int[] ofSpot = new int[order.length];
    double[] x = new double[order.length];
    double[] y = new double[order.length];
    double[] z = new double[order.length];
    int places = 0;
    double variances = 0;
    for (int from = 0, to; from < order.length; from = to) {
      double lowest = spots.elevation()[order[from]];
      double above = 0;
      for (to = from; to < order.length && same(spots, order[from], order[to]); to++) {
        above += spots.elevation()[order[to]] - lowest;
        variances += spots.variance()[order[to]];
        ofSpot[order[to]] = places;
      }
      x[places] = spots.x()[order[from]] - box.middleX();
      y[places] = spots.y()[order[from]] - box.middleY();
      z[places++] = lowest + above / (to - from);
    }
    x = Arrays.copyOf(x, places);
    y = Arrays.copyOf(y, places);
    z = Arrays.copyOf(z, places);
    MeanPlane plane = MeanPlane.of(x, y, z);
    for (int i = 0; i < places; i++) {
      z[i] -= plane.at(x[i], y[i]);
    }
    double variance = variances / order.length;
    return new DensePlaces(box.middleX(), box.middleY(), plane, x, y, z, ofSpot, variance);
  }

  private static boolean same(Spots spots, int one, int other) {
    return spots.x()[one] == spots.x()[other] && spots.y()[one] == spots.y()[other];
  }

  /** How many places there are. */
  int count() {
    return x.length;
  }
}
