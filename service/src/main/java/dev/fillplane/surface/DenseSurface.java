package dev.fillplane.surface;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Polygon;
import org.tinfour.common.IIncrementalTinNavigator;
import org.tinfour.common.Vertex;

/**
 * The floor between many readings, which passes through them: by Sibson's natural neighbours
 * (Sibson 1981, A brief description of natural neighbour interpolation, in Interpreting
 * Multivariate Data, from memory) or on the planes of their Delaunay triangulation. Planes come out
 * exact either way.
 *
 * <p>Outside the hull of the readings the floor is as far above their least-squares plane as at the
 * nearest place of the hull. Readings at one x and y are one place of their mean elevation.
 *
 * <p>Half the variance of a reading is taken as shared by all (how the instrument was levelled and
 * placed: a plane of three random numbers), half as its own. {@link #deviation} puts together the
 * shared part, which grows away from the middle, one reading's own error and a {@link Roughness}
 * that grows with the distance to the nearest reading. Our choices, no source; errors of a method
 * like this are not known exactly.
 *
 * <p>Where thousands of readings stand on one circle, triangles are taken for natural neighbours:
 * of those a position would have thousands. {@link #summary} tells the method.
 *
 * <p>Any number of readings from 3 to 1,000,000, not all on a line; time grows with n log n. The
 * order of the readings and where the plan lies in its coordinates do not matter but for rounding;
 * where four readings lie on one circle, as on a lattice, the triangles (not the natural
 * neighbours) hang on how the plan is turned. Elevations found together and one by one are the same
 * but for rounding (below 1e-12 m). Immutable and safe to share.
 */
public final class DenseSurface implements FittedSurface {

  /** Places that are left out to learn how rough the floor is. */
  private static final int SAMPLED = 2_000;

  private static final double SHARED = 0.5;

  private final Method method;
  private final DensePlaces places;
  private final Triangulation triangulation;
  private final double variance;
  private final Roughness roughness;
  private final Optional<CrossValidation> crossValidation;

  private DenseSurface(Spots spots, Method method) {
    places = DensePlaces.of(spots);
    triangulation = Triangulation.of(places);
    boolean crowd = method == Method.NATURAL_NEIGHBOUR && Crowd.stands(triangulation, places);
    this.method = crowd ? Method.TRIANGLES : method;
    variance = Math.max(places.variance(), KrigedSurface.LEAST_VARIANCE);
    int[] sample = sample();
    Omission[] omissions = new Omission[sample.length];
    IIncrementalTinNavigator navigator = triangulation.tin().getNavigator();
    boolean[] all = new boolean[places.count()];
    Arrays.setAll(
        omissions, i -> Omission.of(places, navigator, this.method, sample[i], all).orElse(null));
    int[] told = IntStream.range(0, sample.length).filter(i -> omissions[i] != null).toArray();
    Omission[] kept = Arrays.stream(told).mapToObj(i -> omissions[i]).toArray(Omission[]::new);
    int[] where = Arrays.stream(told).map(i -> sample[i]).toArray();
    roughness = Roughness.of(places, where, kept, variance);
    crossValidation = crossValidation(kept);
  }

  /**
   * The floor through {@code spots}.
   *
   * @param method natural neighbours or triangles
   * @throws IllegalArgumentException if {@link SpotsCheck#unfit} says so, or the method is another
   */
  public static DenseSurface fit(Spots spots, Method method) {
    SpotsCheck.unfit(spots)
        .ifPresent(
            code -> {
              throw new IllegalArgumentException(code);
            });
    if (method == Method.KRIGING) {
      throw new IllegalArgumentException("kriging is not made of triangles");
    }
    return new DenseSurface(spots, method);
  }

  /** Places spread evenly along the curve through all of them. */
  private int[] sample() {
    int count = Math.min(SAMPLED, places.count());
    return IntStream.range(0, count).map(i -> (int) ((long) i * places.count() / count)).toArray();
  }

  private static Optional<CrossValidation> crossValidation(Omission[] kept) {
    double[] residual = Arrays.stream(kept).mapToDouble(Omission::residual).toArray();
    boolean[] told = new boolean[residual.length];
    Arrays.fill(told, true);
    return new LeaveOneOut(residual, new double[residual.length], told).crossValidation();
  }

  @Override
  public double elevation(double x, double y) {
    return elevations(new double[] {x}, new double[] {y})[0];
  }

  @Override
  public double[] elevations(double[] x, double[] y) {
    DenseInterpolator interpolator = new DenseInterpolator(triangulation, method, places.z());
    double[] found = new double[x.length];
    for (int i = 0; i < found.length; i++) {
      double atX = x[i] - places.middleX();
      double atY = y[i] - places.middleY();
      found[i] = places.plane().at(atX, atY) + interpolator.at(atX, atY);
    }
    return found;
  }

  @Override
  public double deviation(double x, double y) {
    double own = ownDeviations(new double[] {x}, new double[] {y}, new int[1], 0)[0];
    double[] spread = spread(x, y);
    double shared = SHARED * variance / 3;
    double squares = 1 + spread[0] * spread[0] + spread[1] * spread[1];
    return Math.sqrt(own * own + shared * squares);
  }

  private double[] spread(double x, double y) {
    return places.plane().spread(x - places.middleX(), y - places.middleY());
  }

  /**
   * Deviations of what readings have of their own, averaged over areas.
   *
   * @param x middle of each area
   * @param y middle of each area
   * @param readings places in each area; 0 for a single position
   * @param area how large each is
   */
  double[] ownDeviations(double[] x, double[] y, int[] readings, double area) {
    IIncrementalTinNavigator navigator = triangulation.tin().getNavigator();
    double[] deviations = new double[x.length];
    for (int i = 0; i < deviations.length; i++) {
      double atX = x[i] - places.middleX();
      double atY = y[i] - places.middleY();
      int count = Math.max(1, readings[i]);
      // The mean distance of a random position to the nearest of so many scattered ones.
      double distance =
          readings[i] > 0 ? Math.sqrt(area / count) / 2 : nearest(navigator, atX, atY);
      double own = variance * (1 - SHARED) + roughness.variance(atX, atY, distance);
      deviations[i] = Math.sqrt(own / count);
    }
    return deviations;
  }

  private static double nearest(IIncrementalTinNavigator navigator, double x, double y) {
    Vertex vertex = navigator.getNearestVertex(x, y);
    return vertex.getDistance(x, y);
  }

  /** What three standard normal numbers make of the error that all readings share. */
  double shared(double x, double y, double[] normals) {
    double[] spread = spread(x, y);
    return Math.sqrt(SHARED * variance / 3)
        * (normals[0] + normals[1] * spread[0] + normals[2] * spread[1]);
  }

  /** How many places lie in each cell. */
  int[] perCell(RoomLattice lattice) {
    int[] counts = new int[lattice.count()];
    for (int i = 0; i < places.count(); i++) {
      counts[lattice.cellAt(places.x()[i] + places.middleX(), places.y()[i] + places.middleY())]++;
    }
    return counts;
  }

  /** How many different places were measured. */
  int places() {
    return places.count();
  }

  /** The cross-validation is that of a sample of at most 2,000 places. */
  @Override
  public SurfaceSummary summary() {
    return new SurfaceSummary(method, Drift.LINEAR, Optional.empty(), crossValidation);
  }

  @Override
  public LeaveOneOut leaveOneOut() {
    return new DenseDoubts(places, triangulation).find(method, roughness, variance);
  }

  @Override
  public FloorResiduals realisations(List<Polygon> rooms, int count, long seed) {
    return DenseResiduals.draw(this, rooms, count, seed);
  }
}
