package dev.fillplane.estimate;

import dev.fillplane.supply.BagOdds;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One order for many units: fewer bags than the sum of single orders at the same confidence, since
 * what is unsure about one floor is not about the next.
 *
 * <p>What pools: survey, placing, texture, waste. What does not: the yield of a lot, common to all
 * its bags; part bags, since an opened bag does not keep until the next unit; and deliveries, of
 * which each must with those before it suffice for the units so far. The order is never less than
 * the reserve of a single order over the likely bags, and never more than the single orders
 * together. Materials are ordered apart.
 *
 * @see LotSums
 */
public final class PooledOrder {

  private final double confidence;
  private final DeliveryWish wish;

  private PooledOrder(double confidence, DeliveryWish wish) {
    this.confidence = confidence;
    this.wish = wish;
  }

  /**
   * A unit that is ordered for.
   *
   * @param unit its place in the order of pouring, from 0; units in between may be missing
   * @param reference the caller's name of it
   */
  public record Ordered(int unit, String reference, UnitNeed need) {}

  /**
   * Orders for units.
   *
   * @param units in the order of pouring
   * @param confidence chance that the order of a material suffices for all its units, between 0 and
   *     1
   * @return an order for each material, in the order in which they come
   */
  public static List<MaterialOrder> of(List<Ordered> units, double confidence, DeliveryWish wish) {
    Map<String, List<Ordered>> byMaterial = new LinkedHashMap<>();
    for (Ordered unit : units) {
      byMaterial.computeIfAbsent(unit.need().material(), key -> new ArrayList<>()).add(unit);
    }
    PooledOrder pooled = new PooledOrder(confidence, wish);
    return byMaterial.values().stream().map(pooled::order).toList();
  }

  private MaterialOrder order(List<Ordered> units) {
    UnitNeed first = units.get(0).need();
    LotSums sums = new LotSums();
    int singles = 0;
    List<BagDelivery> deliveries = new ArrayList<>();
    int ordered = 0;
    int begun = 0;
    for (int i = 0; i < units.size(); i++) {
      sums.add(units.get(i).need());
      singles += single(units.get(i).need());
      if (i + 1 == units.size() || delivery(units.get(i + 1)) != delivery(units.get(i))) {
        int enough = Math.max(ordered, Math.min(singles, reserved(sums)));
        deliveries.add(delivery(units.subList(begun, i + 1), enough - ordered));
        ordered = enough;
        begun = i + 1;
      }
    }
    return new MaterialOrder(
        first.name(),
        first.bagMass(),
        units.size(),
        Math.min(ordered, sums.enough(0.5)),
        ordered,
        singles,
        singles - ordered,
        sums.lotShare(),
        ordered * first.waterPerBag(),
        units.stream().mapToDouble(unit -> unit.need().primer()).sum(),
        ordered * first.bagMass(),
        wish.pallet(first.bagMass()),
        deliveries);
  }

  private int reserved(LotSums sums) {
    int reserve = BagOdds.whole(BagOdds.LEAST_RESERVE * sums.enough(0.5));
    return Math.max(sums.enough(confidence), reserve);
  }

  /** What the plan says where it was asked for the same confidence. */
  private int single(UnitNeed need) {
    if (Math.abs(need.confidence() - confidence) < 1e-9) {
      return need.order();
    }
    LotSums alone = new LotSums();
    alone.add(need);
    return reserved(alone);
  }

  private int delivery(Ordered unit) {
    return unit.unit() / wish.unitsPerDelivery();
  }

  private BagDelivery delivery(List<Ordered> units, int bags) {
    UnitNeed need = units.get(0).need();
    int pallet = wish.pallet(need.bagMass());
    return new BagDelivery(
        1 + delivery(units.get(0)) * wish.everyDays(),
        units.size(),
        units.get(0).reference(),
        units.get(units.size() - 1).reference(),
        bags,
        bags / pallet,
        bags % pallet,
        bags * need.bagMass());
  }
}
