package dev.fillplane.supply;

import dev.fillplane.depth.DepthSummary;
import dev.fillplane.depth.Depths;
import dev.fillplane.depth.Fill;
import dev.fillplane.material.Aggregate;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.Optional;

/**
 * What aggregate in the deep part of a pour would save. An offer: nothing else in the plan counts
 * on it. The part that takes aggregate ends at a strip where the pour is {@code minimumDepth} deep;
 * over it goes the neat cap, as a layer of its own. Exact for the piecewise-linear floor; what
 * texture and placing take counts as neat.
 *
 * @param share aggregate as a share of the mass of the bag, the most that the sheet allows
 * @param yieldGain what a bag yields more with it, as a share of its yield
 * @param minimumDepth least depth of a pour with aggregate
 * @param neatCap layer without aggregate on top, at least the sheet's least layer
 * @param area of the floor that is deep enough
 * @param volume of the mix with aggregate
 * @param mass of the aggregate, for the whole bags that it is mixed with
 * @param bags likely for all of the pour with aggregate in that part
 * @param saved bags fewer than without
 */
public record AggregateOffer(
    double share,
    double yieldGain,
    @Measured(Dimension.HEIGHT) double minimumDepth,
    @Measured(Dimension.HEIGHT) double neatCap,
    @Measured(Dimension.AREA) double area,
    @Measured(Dimension.FILL) double volume,
    @Measured(Dimension.MASS) double mass,
    int bags,
    int saved) {

  /** The offer; empty where the sheet allows no aggregate or no part of the pour is deep enough. */
  static Optional<AggregateOffer> of(
      Depths depths, DepthSummary depth, Bags bags, DataSheet sheet) {
    return sheet
        .aggregate()
        .filter(aggregate -> depth.maximum() > least(aggregate, sheet))
        .map(aggregate -> of(aggregate, depths, depth, bags, sheet));
  }

  private static AggregateOffer of(
      Aggregate aggregate, Depths depths, DepthSummary depth, Bags bags, DataSheet sheet) {
    double least = least(aggregate, sheet);
    double cap = cap(aggregate, sheet);
    double share = aggregate.shareTo();
    double gain = gain(aggregate, sheet);
    Fill deep = depths.deeperThan(least);
    double volume = deep.volume() + (least - cap) * deep.area();
    double neat = BagOdds.expected(volume, 0, sheet);
    double stretched = neat / (1 + gain);
    double all = BagOdds.expected(depth.volume(), depth.pouredArea(), sheet);
    int saved = BagOdds.whole(all) - BagOdds.whole(all - neat + stretched);
    return new AggregateOffer(
        share,
        gain,
        least,
        cap,
        deep.area(),
        volume,
        BagOdds.whole(stretched) * share * sheet.bagMass(),
        Math.max(0, bags.likely() - saved),
        saved);
  }

  /** The grains fill their own volume and take no water (common practice: washed and dry). */
  private static double gain(Aggregate aggregate, DataSheet sheet) {
    double grains = aggregate.shareTo() * sheet.bagMass() / aggregate.grainDensity();
    return grains / sheet.yieldPerBag();
  }

  private static double cap(Aggregate aggregate, DataSheet sheet) {
    return Math.max(aggregate.neatCap(), sheet.minimumLift());
  }

  private static double least(Aggregate aggregate, DataSheet sheet) {
    return Math.max(aggregate.minimumDepth(), cap(aggregate, sheet));
  }
}
