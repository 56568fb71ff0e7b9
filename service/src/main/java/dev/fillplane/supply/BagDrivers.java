package dev.fillplane.supply;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.stat.StatUtils;

/**
 * What makes the number of bags unsure: the variance that each source alone brings, with the others
 * at their means, in parts of the sum. First order in the errors (Saltelli and others, Global
 * Sensitivity Analysis, 2008, from memory); the little that sources only do together is left out.
 *
 * @see BagOdds
 */
public final class BagDrivers {

  private BagDrivers() {}

  /**
   * The share of each source, in the order of {@link DriverSource}; empty where no pour is unsure.
   *
   * @param volumes volume of the pour in each realisation; at least one
   * @param wetAreas the area that is poured in each
   */
  public static List<Driver> of(double[] volumes, double[] wetAreas) {
    double higher = BagOdds.PLACING_BIAS + BagOdds.TEXTURE_DEPTH;
    double[] placed = new double[volumes.length];
    for (int i = 0; i < placed.length; i++) {
      placed[i] = volumes[i] + (volumes[i] > 0 ? wetAreas[i] * higher : 0);
    }
    double mean = StatUtils.mean(placed);
    double area = mean > 0 ? StatUtils.mean(wetAreas) : 0;
    Map<DriverSource, Double> variances = new EnumMap<>(DriverSource.class);
    variances.put(DriverSource.SURVEY, StatUtils.populationVariance(placed));
    variances.put(DriverSource.PLACING, square(area * BagOdds.PLACING_ERROR));
    variances.put(DriverSource.TEXTURE, square(area * BagOdds.TEXTURE_ERROR));
    variances.put(DriverSource.YIELD, square(mean * BagOdds.YIELD_ERROR));
    variances.put(
        DriverSource.WASTE, square(mean * BagOdds.WASTE_ERROR / (1 + BagOdds.SITE_WASTE)));
    double sum = variances.values().stream().mapToDouble(Double::doubleValue).sum();
    List<Driver> drivers = new ArrayList<>();
    if (sum > 0) {
      variances.forEach((source, variance) -> drivers.add(new Driver(source, variance / sum)));
    }
    return drivers;
  }

  private static double square(double value) {
    return value * value;
  }
}
