package dev.fillplane.depth;

import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;

/**
 * What is poured over each of many equally likely floors, as arrays that nobody writes to.
 *
 * @param volumes volume of all rooms, by realisation
 * @param wetAreas poured area of all rooms, by realisation
 * @param roomVolumes volume by realisation and room
 * @param bareOdds share of the realisations in which the floor stands above the target somewhere
 */
public record VolumeDraws(
    double[] volumes, double[] wetAreas, double[][] roomVolumes, double bareOdds) {

  /** Quantiles of the volume. */
  public VolumeOdds odds() {
    return new VolumeOdds(quantile(volumes, 0.1), quantile(volumes, 0.5), quantile(volumes, 0.9));
  }

  /**
   * The quantile of some draws, linear between order statistics (type 7 of Hyndman and Fan, The
   * American Statistician 50, 1996).
   *
   * @param values at least one
   * @param share above 0 and at most 1
   */
  public static double quantile(double[] values, double share) {
    return new Percentile().withEstimationType(EstimationType.R_7).evaluate(values, share * 100);
  }
}
