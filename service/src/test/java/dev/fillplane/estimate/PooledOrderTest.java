package dev.fillplane.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.supply.BagOdds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One order for many invented units, against a plain simulation of them. */
class PooledOrderTest {

  private static final DeliveryWish ONCE = DeliveryWish.usual();

  /** A unit whose bags are normal with a mean and a deviation, not counting the lot. */
  private static UnitNeed unit(String material, double mean, double deviation, int order) {
    NormalDistribution normal = new NormalDistribution(mean, deviation);
    double[] needs =
        IntStream.range(0, UnitNeed.POINTS)
            .mapToDouble(i -> normal.inverseCumulativeProbability((i + 0.5) / UnitNeed.POINTS))
            .toArray();
    return new UnitNeed(material, Optional.empty(), 25, 0.005, 0.002, 0.9, order, needs);
  }

  private static List<PooledOrder.Ordered> units(int count, double mean, double deviation) {
    List<PooledOrder.Ordered> units = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double own = mean * (1 + 0.01 * (i % 7));
      UnitNeed need = unit("a", own, deviation, single(own, deviation));
      units.add(new PooledOrder.Ordered(i, "unit " + i, need));
    }
    return units;
  }

  /** What a unit orders at 0.9: 1.2816 deviations, those of lot and unit together. */
  private static int single(double mean, double deviation) {
    double more = 1.2816 * Math.hypot(deviation, 0.03 * mean);
    return (int) Math.ceil(Math.max(mean + more, 1.05 * mean));
  }

  private static MaterialOrder order(List<PooledOrder.Ordered> units, double confidence) {
    List<MaterialOrder> orders = PooledOrder.of(units, confidence, ONCE);
    assertEquals(1, orders.size());
    return orders.get(0);
  }

  /** Every unit opens whole bags of one common lot, over and over; nothing clever. */
  private static int simulated(List<PooledOrder.Ordered> units, double confidence) {
    SplittableRandom random = new SplittableRandom(7);
    int[] sums = new int[40_000];
    for (int draw = 0; draw < sums.length; draw++) {
      double yield = BagOdds.lotYield(random.nextGaussian());
      for (PooledOrder.Ordered unit : units) {
        double[] needs = unit.need().needs();
        sums[draw] += (int) Math.ceil(needs[random.nextInt(needs.length)] / yield - 1e-9);
      }
    }
    Arrays.sort(sums);
    return sums[(int) Math.ceil(confidence * sums.length) - 1];
  }

  @ParameterizedTest
  @CsvSource({
    "1, 20, 3, 0.9",
    "2, 20, 3, 0.9",
    "5, 30, 6, 0.9",
    "20, 20, 3, 0.95",
    "50, 8, 2, 0.99",
    "50, 40, 9, 0.8",
    "200, 15, 3, 0.9"
  })
  void isThatOfAPlainSimulation(int count, double mean, double deviation, double confidence) {
    List<PooledOrder.Ordered> units = units(count, mean, deviation);
    LotSums sums = new LotSums();
    units.forEach(unit -> sums.add(unit.need()));
    int plain = simulated(units, confidence);
    assertEquals(plain, sums.enough(confidence), Math.max(1, 0.0015 * plain));
    assertEquals(simulated(units, 0.5), sums.enough(0.5), Math.max(1, 0.0015 * plain));
  }

  /** Only the errors of the units pool: the deviation of the lot stays 3 % of the whole. */
  @Test
  void theYieldOfTheLotDoesNotPool() {
    List<PooledOrder.Ordered> units = units(400, 20, 4);
    MaterialOrder order = order(units, 0.9);
    double mean = order.likely();
    double within = Math.sqrt(400) * 4;
    double more = 1.2816 * Math.hypot(within, 0.03 * mean);
    assertEquals(mean + Math.max(more, 0.05 * mean), order.order(), 0.004 * mean);
    assertTrue(order.lotShare() > 0.85, "share " + order.lotShare());
    assertTrue(order(units(2, 20, 4), 0.9).lotShare() < 0.1);
  }

  /** Opened bags do not keep: units that need half a bag each take a bag each. */
  @Test
  void partBagsDoNotPool() {
    List<PooledOrder.Ordered> units = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      units.add(new PooledOrder.Ordered(i, "cupboard " + i, unit("a", 0.5, 0.01, 1)));
    }
    assertEquals(40, order(units, 0.9).likely());
    assertEquals(40, order(units, 0.9).order());
  }

  @Test
  void isLessThanTheSinglesTogether() {
    MaterialOrder order = order(units(50, 20, 4), 0.9);
    assertEquals(order.sumOfSingles() - order.order(), order.saved());
    assertTrue(order.saved() > 0.08 * order.sumOfSingles(), order.toString());
    assertEquals(25.0 * order.order(), order.mass(), 1e-9);
    assertEquals(0.005 * order.order(), order.mixWater(), 1e-9);
    assertEquals(0.1, order.primer(), 1e-9);
  }

  /** On seeded random units, whatever their number and the confidence. */
  @Test
  void isNeverMoreThanTheSinglesAndRisesWithUnitsAndConfidence() {
    SplittableRandom random = new SplittableRandom(3);
    for (int round = 0; round < 60; round++) {
      int count = 1 + random.nextInt(30);
      List<PooledOrder.Ordered> units = units(count, 3 + 30 * random.nextDouble(), 2);
      double confidence = 0.6 + 0.35 * random.nextDouble();
      MaterialOrder order = order(units, confidence);
      assertTrue(order.saved() >= 0, order.toString());
      assertTrue(order.likely() <= order.order(), order.toString());
      assertTrue(order.order() <= order(units, confidence + 0.04).order(), order.toString());
      MaterialOrder fewer = order(units.subList(0, Math.max(1, count - 1)), confidence);
      assertTrue(fewer.order() <= order.order(), order.toString());
    }
  }

  @Test
  void oneUnitAtItsOwnConfidenceOrdersWhatItsPlanSays() {
    MaterialOrder alone = order(units(1, 20, 3), 0.9);
    assertEquals(single(20, 3), alone.order(), 1);
    assertEquals(single(20, 3), alone.sumOfSingles());
  }

  @Test
  void materialsAreOrderedApart() {
    List<PooledOrder.Ordered> units =
        List.of(
            new PooledOrder.Ordered(0, "x", unit("a", 10, 1, 12)),
            new PooledOrder.Ordered(1, "y", unit("b", 30, 1, 33)),
            new PooledOrder.Ordered(2, "z", unit("a", 10, 1, 12)));
    List<MaterialOrder> orders = PooledOrder.of(units, 0.9, ONCE);
    assertEquals(2, orders.size());
    assertEquals(2, orders.get(0).units());
    assertEquals(24, orders.get(0).sumOfSingles());
    assertEquals(33, orders.get(1).sumOfSingles());
  }

  /** The reserve comes with the first deliveries: no lorry brings what is short before noon. */
  @Test
  void deliveriesSufficeAsTheyCome() {
    List<PooledOrder.Ordered> units = units(12, 20, 4);
    DeliveryWish wish = new DeliveryWish(OptionalInt.of(2), 2, OptionalInt.empty());
    MaterialOrder order = PooledOrder.of(units, 0.9, wish).get(0);
    assertEquals(List.of(1, 3, 5), order.deliveries().stream().map(BagDelivery::day).toList());
    assertEquals(List.of(4, 4, 4), order.deliveries().stream().map(BagDelivery::units).toList());
    assertEquals("unit 4", order.deliveries().get(1).from());
    assertEquals("unit 7", order.deliveries().get(1).to());
    assertEquals(order(units.subList(0, 4), 0.9).order(), order.deliveries().get(0).bags());
    assertEquals(order.order(), order.deliveries().stream().mapToInt(BagDelivery::bags).sum());
    assertEquals(order(units, 0.9).order(), order.order());
  }

  /** A tonne a pallet: 40 bags of 25 kg. */
  @Test
  void palletsAreFullOrLoose() {
    BagDelivery usual = order(units(10, 20, 4), 0.9).deliveries().get(0);
    assertEquals(usual.bags(), 40 * usual.pallets() + usual.looseBags());
    assertTrue(usual.looseBags() < 40);
    DeliveryWish wish = new DeliveryWish(OptionalInt.empty(), null, OptionalInt.of(48));
    MaterialOrder told = PooledOrder.of(units(10, 20, 4), 0.9, wish).get(0);
    assertEquals(48, told.bagsPerPallet());
    assertEquals(told.order() / 48, told.deliveries().get(0).pallets());
  }

  @Test
  void unitsThatPourNothingOrderNothing() {
    UnitNeed none =
        new UnitNeed("a", Optional.empty(), 25, 0.005, 0, 0.9, 0, new double[UnitNeed.POINTS]);
    MaterialOrder order = order(List.of(new PooledOrder.Ordered(0, "flat", none)), 0.9);
    assertEquals(0, order.order());
    assertEquals(0, order.lotShare());
    assertEquals(List.of(), PooledOrder.of(List.of(), 0.9, ONCE));
  }
}
