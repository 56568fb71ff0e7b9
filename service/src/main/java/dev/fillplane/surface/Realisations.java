package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;
import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Polygon;

/**
 * Floors that all agree with the readings as well as their error allows: what a floor may be above
 * or below its {@link KrigedSurface}, drawn at random (conditional Gaussian simulation by the
 * Cholesky factor of the covariance that the readings leave, drift included). Where the covariance
 * was fitted, the pairs take turns at several equally likely ones, each about a mean of its own
 * ({@link LikelyCovariances}); so not knowing it widens the odds. Those means are taken together
 * about the mean surface, which stays that of the best fit.
 *
 * <p>A residual holds for a whole cell of a lattice over the rooms. Cells are no wider than a third
 * of the range and than half the usual distance of two readings (root of area over number), as long
 * as {@link #MOST_CELLS} suffice. Where they do not, cells are wider; each still carries the full
 * spread of its middle, so that the spread of a volume comes out too large rather than too small.
 *
 * <p>Realisations come in pairs, the second one mirrored at the mean of their covariance. The same
 * surface, rooms and seed give the same realisations; more of them begin with the same ones.
 * Immutable and safe to share.
 */
public final class Realisations implements FloorResiduals {

  /** Cells of the lattice at most, but for rooms that need one each. */
  public static final int MOST_CELLS = 500;

  /**
   * Added to the covariance, in parts of the largest variance, where rounding makes it singular.
   */
  private static final double JITTER = 1e-9;

  private final RoomLattice lattice;
  private final int count;
  private final double[][] drawn;
  private final double[][] shift;

  private Realisations(RoomLattice lattice, int count, double[][] drawn, double[][] shift) {
    this.lattice = lattice;
    this.count = count;
    this.drawn = drawn;
    this.shift = shift;
  }

  /**
   * Draws {@code count} realisations over {@code rooms}.
   *
   * @throws IllegalArgumentException if there is no room or nothing to draw
   */
  public static Realisations draw(
      KrigedSurface surface, List<Polygon> rooms, int count, long seed) {
    if (rooms.isEmpty() || count < 1) {
      throw new IllegalArgumentException("nothing to draw");
    }
    RoomLattice lattice = RoomLattice.over(rooms, pitch(surface, rooms), MOST_CELLS);
    List<KrigedSurface> likely = surface.likely();
    double[][] drawn = normals((count + 1) / 2, lattice.count(), seed);
    for (int i = 0; i < likely.size(); i++) {
      draw(likely.get(i).factor(lattice, JITTER), drawn, i, likely.size());
    }
    return new Realisations(lattice, count, turned(drawn), shifts(likely, lattice));
  }

  /** Turns every {@code step}th row of normal numbers from {@code first} on into a draw. */
  private static void draw(FieldFactor factor, double[][] drawn, int first, int step) {
    for (int pair = first; pair < drawn.length; pair += step) {
      factor.draw(drawn[pair]);
    }
  }

  /** A row for each cell. */
  private static double[][] turned(double[][] byPair) {
    double[][] byCell = new double[byPair[0].length][byPair.length];
    for (int pair = 0; pair < byPair.length; pair++) {
      double[] row = byPair[pair];
      for (int cell = 0; cell < row.length; cell++) {
        byCell[cell][pair] = row[cell];
      }
    }
    return byCell;
  }

  /** The mean of each surface less the mean of all, by cell. */
  private static double[][] shifts(List<KrigedSurface> likely, RoomLattice lattice) {
    double[][] shifts = new double[likely.size()][];
    double[] mean = new double[lattice.count()];
    for (int i = 0; i < shifts.length; i++) {
      shifts[i] = likely.get(i).elevations(lattice.x(), lattice.y());
      for (int cell = 0; cell < mean.length; cell++) {
        mean[cell] += shifts[i][cell] / shifts.length;
      }
    }
    for (double[] shift : shifts) {
      for (int cell = 0; cell < mean.length; cell++) {
        shift[cell] -= mean[cell];
      }
    }
    return shifts;
  }

  private static double pitch(KrigedSurface surface, List<Polygon> rooms) {
    double area = rooms.stream().mapToDouble(Polygon::getArea).sum();
    return Math.min(surface.range() / 3, Math.sqrt(area / surface.places()) / 2);
  }

  /** Standard normal numbers, a row for each pair and a column for each cell. */
  private static double[][] normals(int pairs, int cells, long seed) {
    SplittableRandom seeds = new SplittableRandom(seed);
    double[][] normals = new double[pairs][cells];
    for (double[] row : normals) {
      Stopped.ifInterrupted();
      SplittableRandom random = seeds.split();
      for (int cell = 0; cell < cells; cell++) {
        row[cell] = random.nextGaussian();
      }
    }
    return normals;
  }

  /** How many realisations there are. */
  @Override
  public int count() {
    return count;
  }

  /** How many cells the lattice has. */
  public int cells() {
    return lattice.count();
  }

  /** The cell at a position, from 0; outside the rooms the nearest. */
  @Override
  public int cellAt(double x, double y) {
    return lattice.cellAt(x, y);
  }

  /** What {@code realisation} adds to the elevation of the surface all over {@code cell}. */
  @Override
  public double residual(int realisation, int cell) {
    int pair = realisation / 2;
    double value = drawn[cell][pair];
    return shift[pair % shift.length][cell] + (realisation % 2 == 0 ? value : -value);
  }

  /** The middle of a cell. */
  double[] middle(int cell) {
    return new double[] {lattice.centreX(cell), lattice.centreY(cell)};
  }
}
