package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;

/**
 * Sill and range of a Matern 3/2 covariance by restricted likelihood: a logarithmic grid first,
 * then Brent's search round its best value. The range stays between the usual distance of two spots
 * and the extent of all, the sill at or above {@link #LEAST_SILL}. Exact to about 1 % of the range,
 * far inside what a survey can tell.
 */
final class CovarianceFit {

  /** Least sill, (0.1 mm)^2: a floor that looks perfectly plane is still not known for certain. */
  static final double LEAST_SILL = 1e-8;

  /** Spots used at most; more would narrow the fit by little. */
  static final int MOST_SPOTS = 300;

  /** Places under which nothing is fitted, because a fit would follow chance. */
  static final int LEAST_PLACES = 8;

  /** Sill of a floor of which too little is known to fit one, (3 mm)^2: our choice. */
  static final double USUAL_SILL = 9e-6;

  /** Range of such a floor in metres: our choice. */
  static final double USUAL_RANGE = 3;

  /** The sill is sought up to this many times the variance of the elevations about their mean. */
  private static final double SILL_REACH = 100;

  private static final double RANGE_STEP = Math.log(2);
  private static final double SILL_STEP = Math.log(4);
  private static final double RANGE_TOLERANCE = 0.01;
  private static final double SILL_TOLERANCE = 1e-5;
  private static final double EQUAL = 1e-9;

  private final RangeLikelihoods likelihoods;
  private final double mostLogSill;

  private CovarianceFit(RangeLikelihoods likelihoods) {
    this.likelihoods = likelihoods;
    LocalSpots spots = likelihoods.spots();
    double square = 0;
    for (double z : spots.z()) {
      square += z * z;
    }
    double reach = SILL_REACH * square / spots.count();
    mostLogSill = Math.log(Math.max(reach, 10 * LEAST_SILL));
  }

  /**
   * The covariance for {@code spots}, which lie as {@code spacing} tells.
   *
   * @param likelihoods of no more than {@link #MOST_SPOTS} of them
   */
  static Variogram of(LocalSpots spots, Spacing spacing, RangeLikelihoods likelihoods) {
    double nugget = LocalSpots.mean(spots.variance());
    if (spacing.places() < LEAST_PLACES) {
      return new Variogram(VariogramShape.MATERN_3_2, nugget, USUAL_SILL, USUAL_RANGE);
    }
    CovarianceFit fit = new CovarianceFit(likelihoods);
    double logRange = fit.bestLogRange(spacing);
    double sill = Math.exp(fit.bestLogSill(logRange).getPoint());
    return new Variogram(VariogramShape.MATERN_3_2, nugget, sill, Math.exp(logRange));
  }

  private double bestLogRange(Spacing spacing) {
    double least = Math.log(spacing.nearest());
    double most = Math.log(spacing.extent());
    return lowest(
            logRange -> bestLogSill(logRange).getValue(), least, most, RANGE_STEP, RANGE_TOLERANCE)
        .getPoint();
  }

  private UnivariatePointValuePair bestLogSill(double logRange) {
    RestrictedLikelihood.OfSill ofSill = likelihoods.at(logRange);
    return lowest(
        logSill -> ofSill.minusTwiceLog(Math.exp(logSill)),
        Math.log(LEAST_SILL),
        mostLogSill,
        SILL_STEP,
        SILL_TOLERANCE);
  }

  /** The lowest value between two ends; of equal ones on the grid the first. */
  private static UnivariatePointValuePair lowest(
      UnivariateFunction function, double from, double to, double step, double tolerance) {
    int steps = (int) Math.max(1, Math.ceil((to - from) / step));
    double width = (to - from) / steps;
    double best = from;
    double bestValue = function.value(from);
    for (int i = 1; i <= steps && width > 0; i++) {
      Stopped.ifInterrupted();
      double at = RangeLikelihoods.logRange(from, to, steps, i);
      double value = function.value(at);
      if (better(value, bestValue)) {
        best = at;
        bestValue = value;
      }
    }
    double low = Math.max(from, best - width);
    double high = Math.min(to, best + width);
    UnivariatePointValuePair atGrid = new UnivariatePointValuePair(best, bestValue);
    if (high - low <= tolerance) {
      return atGrid;
    }
    UnivariatePointValuePair refined =
        new BrentOptimizer(1e-12, tolerance)
            .optimize(
                new MaxEval(500),
                new UnivariateObjectiveFunction(function),
                GoalType.MINIMIZE,
                new SearchInterval(low, high, middle(low, high, best)));
    return better(refined.getValue(), bestValue) ? refined : atGrid;
  }

  private static double middle(double low, double high, double best) {
    return best > low && best < high ? best : (low + high) / 2;
  }

  /** Better by more than rounding, so that chance does not choose between equals. */
  private static boolean better(double value, double than) {
    return value < than - EQUAL * Math.abs(than);
  }
}
