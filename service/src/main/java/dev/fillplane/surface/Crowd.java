package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;
import org.tinfour.common.IIncrementalTinNavigator;
import org.tinfour.interpolation.NaturalNeighborInterpolator;

/**
 * Whether positions have so many natural neighbours that asking for them has no end: inside a
 * circle of readings each of them is a neighbour. Usually there are about six, even on a lattice.
 */
final class Crowd {

  /** Positions across the box of the places, along x and along y. */
  private static final int ACROSS = 16;

  /** More neighbours than this on average are a crowd; own choice. */
  private static final int MANY = 200;

  private Crowd() {}

  /** Looks at positions evenly spread over the places, no longer than the answer is open. */
  static boolean stands(Triangulation triangulation, DensePlaces places) {
    Box box = Box.of(places.x(), places.y());
    IIncrementalTinNavigator navigator = triangulation.tin().getNavigator();
    NaturalNeighborInterpolator neighbours = new NaturalNeighborInterpolator(triangulation.tin());
    long left = (long) MANY * ACROSS * ACROSS;
    for (int i = 0; i < ACROSS * ACROSS && left >= 0; i++) {
      Stopped.ifInterrupted();
      double x = box.west() + (i % ACROSS + 0.5) / ACROSS * (box.east() - box.west());
      double y = box.south() + (i / ACROSS + 0.5) / ACROSS * (box.north() - box.south());
      if (navigator.isPointInsideTin(x, y)) {
        left -= neighbours.getBowyerWatsonEnvelope(x, y).size();
      }
    }
    return left < 0;
  }
}
