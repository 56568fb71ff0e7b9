package dev.fillplane.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Covariances that a few readings leave possible. The best fit alone makes odds too narrow where it
 * could as well have been another; so realisations are drawn from {@link #COUNT} of them.
 *
 * <p>Each pair of a logarithmic grid of sills and ranges has a weight: its restricted likelihood
 * times a proper prior, our choice: the logarithms of sill and range are normal about the usual
 * floor's ((3 mm)^2 and 3 m), with {@link #SILL_SPREAD} and {@link #RANGE_SPREAD} as deviations,
 * the range no nearer than the spots and no wider than all of them. The grid is ordered by sill
 * over cubed range, on which the error between spots depends most (Stein, Interpolation of Spatial
 * Data, 1999, from memory), and cut into parts of equal weight; the middle of each stands for it.
 */
final class LikelyCovariances {

  /** Covariances that stand for all. */
  static final int COUNT = 4;

  /** Places above which the best fit is sure enough to stand alone. */
  static final int MOST_PLACES = 150;

  /** Deviation of the logarithm of the sill: the deviation of a floor is told to a factor of 3. */
  static final double SILL_SPREAD = Math.log(8);

  /** Deviation of the logarithm of the range: told to a factor of 2. */
  static final double RANGE_SPREAD = Math.log(2);

  private static final double STEP = Math.log(2);

  /** Deviations of the prior that the grid of sills goes to either side. */
  private static final double REACH = 3;

  private record Weighted(double logSill, double logRange, double value) {

    double roughness() {
      return logSill - 3 * logRange;
    }
  }

  private final RangeLikelihoods likelihoods;
  private final List<Weighted> grid = new ArrayList<>();

  private LikelyCovariances(RangeLikelihoods likelihoods) {
    this.likelihoods = likelihoods;
  }

  /** Equally likely covariances for the spots, which lie as {@code spacing} tells. */
  static List<Variogram> of(RangeLikelihoods likelihoods, Spacing spacing) {
    LikelyCovariances likely = new LikelyCovariances(likelihoods);
    double least = Math.log(spacing.nearest());
    double most = Math.log(spacing.extent());
    int steps = (int) Math.max(1, Math.ceil((most - least) / STEP));
    for (int i = 0; i <= steps; i++) {
      likely.addRange(RangeLikelihoods.logRange(least, most, steps, i));
    }
    double nugget = LocalSpots.mean(likelihoods.spots().variance());
    return likely.quantiles().stream()
        .map(
            at ->
                new Variogram(
                    VariogramShape.MATERN_3_2,
                    nugget,
                    Math.exp(at.logSill()),
                    Math.exp(at.logRange())))
        .toList();
  }

  private void addRange(double logRange) {
    RestrictedLikelihood.OfSill ofSill = likelihoods.at(logRange);
    double usual = Math.log(CovarianceFit.USUAL_SILL);
    int steps = (int) Math.ceil(REACH * SILL_SPREAD / STEP);
    for (int i = -steps; i <= steps; i++) {
      double logSill = usual + i * STEP;
      double prior =
          square(i * STEP / SILL_SPREAD)
              + square((logRange - Math.log(CovarianceFit.USUAL_RANGE)) / RANGE_SPREAD);
      double value = ofSill.minusTwiceLog(Math.exp(logSill)) + prior;
      grid.add(new Weighted(logSill, logRange, value));
    }
  }

  private List<Weighted> quantiles() {
    grid.sort(
        Comparator.comparingDouble(Weighted::roughness).thenComparingDouble(Weighted::logRange));
    double best = grid.stream().mapToDouble(Weighted::value).min().orElseThrow();
    double all = grid.stream().mapToDouble(at -> weight(at, best)).sum();
    List<Weighted> chosen = new ArrayList<>();
    double sum = 0;
    for (Weighted at : grid) {
      sum += weight(at, best);
      while (chosen.size() < COUNT && sum >= (chosen.size() + 0.5) / COUNT * all) {
        chosen.add(at);
      }
    }
    return chosen;
  }

  private static double weight(Weighted at, double best) {
    return Math.exp((best - at.value()) / 2);
  }

  private static double square(double value) {
    return value * value;
  }
}
