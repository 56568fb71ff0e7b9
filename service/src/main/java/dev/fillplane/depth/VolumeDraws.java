package dev.fillplane.depth;

import java.util.Arrays;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;

/**
 * What is poured over each of many equally likely floors, as arrays that nobody writes to.
 *
 * @param volumes volume of all rooms, by realisation
 * @param wetAreas poured area of all rooms, by realisation
 * @param roomVolumes volume by realisation and room
 * @param reaches how far the floor stands above the target at most, by realisation; not above 0
 *     where it is covered everywhere
 */
public record VolumeDraws(
    double[] volumes, double[] wetAreas, double[][] roomVolumes, double[] reaches) {

  /** Keeps the last digits of a product from costing a realisation. */
  private static final double ROUNDING = 1e-9;

  /** Quantiles of the volume. */
  public VolumeOdds odds() {
    return new VolumeOdds(quantile(volumes, 0.1), quantile(volumes, 0.5), quantile(volumes, 0.9));
  }

  /** Quantiles of the volume of one room. */
  public VolumeOdds odds(int room) {
    double[] ofRoom = Arrays.stream(roomVolumes).mapToDouble(draw -> draw[room]).toArray();
    return new VolumeOdds(quantile(ofRoom, 0.1), quantile(ofRoom, 0.5), quantile(ofRoom, 0.9));
  }

  /** Share of the realisations in which the floor stands above the target somewhere. */
  public double bareOdds() {
    double bare = Arrays.stream(reaches).filter(reach -> reach > 0).count();
    return reaches.length == 0 ? 0 : bare / reaches.length;
  }

  /**
   * The least height, added to the target, that leaves no more than {@code 1 - confidence} of the
   * realisations with bare floor; 0 where none is needed.
   *
   * @param confidence above 0 and at most 1
   */
  public double guardHeight(double confidence) {
    if (reaches.length == 0) {
      return 0;
    }
    double[] sorted = reaches.clone();
    Arrays.sort(sorted);
    int covered = (int) Math.ceil(confidence * sorted.length - ROUNDING);
    return Math.max(0, sorted[Math.max(0, covered - 1)]);
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
