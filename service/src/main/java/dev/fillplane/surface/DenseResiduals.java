package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Polygon;

/**
 * Floors as likely as a {@link DenseSurface}, one value for each cell of a lattice over the rooms.
 *
 * <p>Two parts are added. What all readings share (how the instrument was levelled and placed) is a
 * plane of three random numbers. What each reading and each gap between readings has of its own is
 * drawn anew for every cell and averages out over the readings in it; a cell without any gets the
 * variance of its middle. Cells are as wide as the usual distance of two readings, or as {@link
 * Realisations#MOST_CELLS} allow. Spots of the floor smaller than a cell are not drawn, so the
 * chance of a bare spot is that of patches of this size.
 *
 * <p>Realisations come in pairs, each second one the negative of the one before it. The same
 * surface, rooms and seed give the same realisations. Immutable and safe to share.
 */
final class DenseResiduals implements FloorResiduals {

  private final RoomLattice lattice;
  private final int count;
  private final double[][] drawn;

  private DenseResiduals(RoomLattice lattice, int count, double[][] drawn) {
    this.lattice = lattice;
    this.count = count;
    this.drawn = drawn;
  }

  static DenseResiduals draw(DenseSurface surface, List<Polygon> rooms, int count, long seed) {
    if (rooms.isEmpty() || count < 1) {
      throw new IllegalArgumentException("nothing to draw");
    }
    double area = rooms.stream().mapToDouble(Polygon::getArea).sum();
    double pitch = Math.sqrt(area / surface.places());
    RoomLattice lattice = RoomLattice.over(rooms, pitch, Realisations.MOST_CELLS);
    double[] x = new double[lattice.count()];
    double[] y = new double[lattice.count()];
    Arrays.setAll(x, lattice::centreX);
    Arrays.setAll(y, lattice::centreY);
    double[] own = surface.ownDeviations(x, y, surface.perCell(lattice), area / lattice.count());
    double[][] drawn = new double[lattice.count()][(count + 1) / 2];
    SplittableRandom seeds = new SplittableRandom(seed);
    for (int pair = 0; pair < drawn[0].length; pair++) {
      Stopped.ifInterrupted();
      SplittableRandom random = seeds.split();
      double[] shared = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
      for (int cell = 0; cell < drawn.length; cell++) {
        drawn[cell][pair] =
            surface.shared(x[cell], y[cell], shared) + own[cell] * random.nextGaussian();
      }
    }
    return new DenseResiduals(lattice, count, drawn);
  }

  @Override
  public int count() {
    return count;
  }

  @Override
  public int cellAt(double x, double y) {
    return lattice.cellAt(x, y);
  }

  @Override
  public double residual(int realisation, int cell) {
    double value = drawn[cell][realisation / 2];
    return realisation % 2 == 0 ? value : -value;
  }
}
