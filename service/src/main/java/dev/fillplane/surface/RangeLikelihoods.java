package dev.fillplane.surface;

import java.util.Map;
import java.util.TreeMap;

/**
 * Restricted likelihoods of some spots by the logarithm of the range. Each range is worked out
 * once: the best covariance and the likely ones are sought on the same grid. Safe to share.
 */
final class RangeLikelihoods {

  private final LocalSpots spots;
  private final DriftTerms terms;
  private final Map<Double, RestrictedLikelihood.OfSill> known = new TreeMap<>();
  private RestrictedLikelihood likelihood;

  RangeLikelihoods(LocalSpots spots, DriftTerms terms) {
    this.spots = spots;
    this.terms = terms;
  }

  /** A range of the grid, from 0 to {@code steps}, in logarithms. */
  static double logRange(double least, double most, int steps, int at) {
    return least + at * ((most - least) / steps);
  }

  LocalSpots spots() {
    return spots;
  }

  /** For a Matern 3/2 correlation, as a function of the sill. */
  synchronized RestrictedLikelihood.OfSill at(double logRange) {
    return known.computeIfAbsent(logRange, this::find);
  }

  private RestrictedLikelihood.OfSill find(double logRange) {
    if (likelihood == null) {
      likelihood = new RestrictedLikelihood(spots, terms);
    }
    return likelihood.at(new Correlation(VariogramShape.MATERN_3_2, Math.exp(logRange)));
  }
}
