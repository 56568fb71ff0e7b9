package dev.fillplane.plan;

import dev.fillplane.material.DataSheet;
import dev.fillplane.supply.BagOdds;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Bags above the likely ones that cover a pour with some confidence, from variances instead of
 * draws: survey, placing and yield are taken as independent and their sum as normal, which {@link
 * BagOdds} does not need to. For differences that draws are too coarse for.
 *
 * @param volume likely volume of the pour
 * @param wetArea likely poured area
 * @param sheet of the material
 * @param confidence chance that the bags suffice
 */
record Reserve(double volume, double wetArea, DataSheet sheet, double confidence) {

  /** Bags, not rounded, of which {@code variance} (m6) is the survey's share. */
  double bags(double variance) {
    double placed = volume + wetArea * (BagOdds.PLACING_BIAS + BagOdds.TEXTURE_DEPTH);
    double placing = BagOdds.PLACING_ERROR * wetArea;
    double yield = BagOdds.YIELD_ERROR * placed;
    return ofDeviation(Math.sqrt(variance + placing * placing + yield * yield));
  }

  /** Bags that a standard deviation of the volume alone asks for. */
  double ofDeviation(double deviation) {
    double quantile = new NormalDistribution(null, 0, 1).inverseCumulativeProbability(confidence);
    double bag = sheet.yieldPerBag() * (1 - BagOdds.BARREL_RESIDUE);
    return quantile * deviation * (1 + BagOdds.SITE_WASTE) / bag;
  }
}
