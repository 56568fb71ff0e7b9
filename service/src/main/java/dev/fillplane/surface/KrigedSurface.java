package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/**
 * The floor between measured spots by kriging: a drift (constant or plane) by generalised least
 * squares and the deviation from it, as alike at two places as a covariance says.
 *
 * <p>The error of a measurement (the nugget) is not part of the floor: the surface passes near the
 * spots, not through them, and {@link #deviation} is that of the floor. The error of a spot is its
 * variance, at least {@link #LEAST_VARIANCE}. Unless a variogram is given, a Matern 3/2 covariance
 * is fitted by restricted likelihood; fewer than 8 different places get a sill of (3 mm)^2 and a
 * range of 3 m instead, our choice; three places give their plane, with the deviation that this
 * covariance leaves between them. A given variogram is used untouched, its nugget for every spot;
 * only where rounding would make its matrix singular is the nugget raised, by 1e-10 of the sill or
 * the least power of ten times that which helps.
 *
 * <p>With a nugget raised like that, spots of a floor rougher than its Gaussian shape allows are
 * met only to about a millimetre.
 *
 * <p>Exact for that model up to rounding and the table of correlations (relative 5e-11). The
 * uncertainty of the fitted covariance is not in the deviation; {@link Realisations} has it. Time
 * grows with the cube of the number of spots; meant for up to about 2,000. Neither the order of the
 * spots nor where and how the plan lies in its coordinates matters. Immutable and safe to share.
 *
 * @see CovarianceFit
 */
public final class KrigedSurface implements FittedSurface {

  /** Least variance of a measurement in m2: (0.1 mm)^2. */
  public static final double LEAST_VARIANCE = 1e-8;

  /** Means that are worked out together: their rows stay in the nearest cache. */
  private static final int MEANS = 512;

  private final LocalSpots spots;
  private final Drift drift;
  private final DriftTerms terms;
  private final Variogram used;
  private final Optional<Variogram> variogram;
  private final KrigingSystem system;
  private final Kriging kriging;
  private final Spacing spacing;
  private final Optional<RangeLikelihoods> likelihoods;

  private KrigedSurface(
      LocalSpots spots,
      Drift drift,
      DriftTerms terms,
      Variogram used,
      boolean shown,
      Optional<RangeLikelihoods> fitted,
      Spacing spacing) {
    this.spots = spots;
    this.drift = drift;
    this.terms = terms;
    this.variogram = shown ? Optional.of(used) : Optional.empty();
    this.system = new KrigingSystem(spots, terms, used);
    this.kriging = new Kriging(system);
    this.used = used;
    this.spacing = spacing;
    likelihoods = fitted.filter(all -> spacing.places() <= LikelyCovariances.MOST_PLACES);
  }

  /**
   * The floor through {@code spots}.
   *
   * @throws IllegalArgumentException if {@link SpotsCheck#unfit} says so
   */
  public static KrigedSurface fit(Spots spots, SurfaceWish wish) {
    return fit(spots, wish, List.of());
  }

  /**
   * The same where steps jump only in the rooms that they cut. Steps must be told by the spots
   * ({@link StepCheck}); a jump is estimated with the drift by generalised least squares, and a
   * {@link FloorSample} and its contours show it as a ramp within one cell.
   */
  public static KrigedSurface fit(Spots spots, SurfaceWish wish, List<Polygon> rooms) {
    SpotsCheck.unfit(spots)
        .ifPresent(
            code -> {
              throw new IllegalArgumentException(code);
            });
    LocalSpots local = LocalSpots.of(spots);
    Spacing spacing = Spacing.of(local.x(), local.y());
    boolean onlyPlane = wish.variogram().isEmpty() && spacing.places() <= 3;
    Drift drift = onlyPlane ? Drift.LINEAR : wish.drift();
    DriftTerms terms = DriftTerms.of(drift, spacing.extent(), wish.steps(), rooms, local);
    if (wish.variogram().isPresent()) {
      Variogram given = wish.variogram().get();
      LocalSpots alike = local.variance(given.nugget());
      return new KrigedSurface(alike, drift, terms, given, true, Optional.empty(), spacing);
    }
    LocalSpots sure = local.varianceAtLeast(LEAST_VARIANCE);
    RangeLikelihoods likelihoods =
        new RangeLikelihoods(SpreadChoice.of(sure, CovarianceFit.MOST_SPOTS), terms);
    Variogram fitted = CovarianceFit.of(sure, spacing, likelihoods);
    return new KrigedSurface(
        sure, drift, terms, fitted, !onlyPlane, Optional.of(likelihoods), spacing);
  }

  @Override
  public double elevation(double x, double y) {
    return elevations(new double[] {x}, new double[] {y})[0];
  }

  @Override
  public double deviation(double x, double y) {
    return deviations(new double[] {x}, new double[] {y})[0];
  }

  /** {@link #elevation} at many positions, with the same results to the bit. */
  @Override
  public double[] elevations(double[] x, double[] y) {
    double[] out = new double[x.length];
    for (int from = 0; from < x.length; from += MEANS) {
      Stopped.ifInterrupted();
      int to = Math.min(x.length, from + MEANS);
      double[] means = kriging.means(localX(x, from, to), localY(y, from, to));
      for (int i = from; i < to; i++) {
        out[i] = spots.datum() + means[i - from];
      }
    }
    return out;
  }

  /** {@link #deviation} at many positions, with the same results to the bit. */
  @Override
  public double[] deviations(double[] x, double[] y) {
    double[] out = new double[x.length];
    for (int from = 0; from < x.length; from += Cholesky.BLOCK) {
      Stopped.ifInterrupted();
      int to = Math.min(x.length, from + Cholesky.BLOCK);
      double[] variances = kriging.variances(localX(x, from, to), localY(y, from, to));
      for (int i = from; i < to; i++) {
        out[i] = Math.sqrt(variances[i - from]);
      }
    }
    return out;
  }

  /** The covariance of the floor at many positions. */
  LeftCovariance left(double[] x, double[] y) {
    return kriging.left(localX(x, 0, x.length), localY(y, 0, y.length));
  }

  /**
   * The factor of the covariance of the floor at the middles of some cells.
   *
   * @param jitter added to the diagonal, in parts of the largest variance, where rounding makes the
   *     matrix singular
   */
  FieldFactor factor(RoomLattice lattice, double jitter) {
    LeftCovariance left = left(lattice.x(), lattice.y());
    Correlation correlation = new Correlation(used.shape(), used.range());
    return FieldFactor.of(left, LatticePrior.of(lattice, correlation, used.sill()), jitter);
  }

  /** The range of the covariance in use. */
  double range() {
    return used.range();
  }

  /** How many different places were measured. */
  int places() {
    return spacing.places();
  }

  /**
   * Equally likely surfaces through the same spots, by covariances that the spots leave possible;
   * only this one where its variogram is given or the spots are many.
   */
  List<KrigedSurface> likely() {
    if (likelihoods.isEmpty()) {
      return List.of(this);
    }
    RangeLikelihoods found = likelihoods.get();
    RangeLikelihoods ofAll = found.spots() == spots ? found : new RangeLikelihoods(spots, terms);
    return LikelyCovariances.of(ofAll, spacing).stream()
        .map(
            other ->
                new KrigedSurface(spots, drift, terms, other, false, Optional.empty(), spacing))
        .toList();
  }

  /** What was used; the cross-validation is worked out at each call. */
  @Override
  public SurfaceSummary summary() {
    return new SurfaceSummary(Method.KRIGING, drift, variogram, leaveOneOut().crossValidation());
  }

  /** Each spot against the others; worked out at each call. */
  @Override
  public LeaveOneOut leaveOneOut() {
    return system.leaveOneOut();
  }

  @Override
  public FloorResiduals realisations(List<Polygon> rooms, int count, long seed) {
    return Realisations.draw(this, rooms, count, seed);
  }

  private double[] localX(double[] x, int from, int to) {
    return Arrays.stream(x, from, to).map(value -> value - spots.originX()).toArray();
  }

  private double[] localY(double[] y, int from, int to) {
    return Arrays.stream(y, from, to).map(value -> value - spots.originY()).toArray();
  }
}
