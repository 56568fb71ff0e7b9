package dev.fillplane.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bags of 15 L with the errors of placing and yield; the errors are common practice, no source. */
class BagOddsTest {

  private static final DataSheet SHEET = Catalogue.usual();
  private static final double ALLOWANCES = 1.03 / (1 - 0.015);

  /** Bias 0.5 mm and texture 0.4 mm over the wet area, residue 1.5 %, waste 3 %. */
  @Test
  void likelyBagsCarryTheAllowances() {
    double bags = (0.300 + 60 * 0.0009) / 0.015 * ALLOWANCES;
    assertEquals(24.68, bags, 0.005);
    assertEquals(25, BagOdds.likely(0.300, 60, SHEET));
    assertEquals(25, certain(0.300, 60, 0.9).likely());
    assertEquals(25, certain(0.300, 60, 0.9).p50());
  }

  /** Common practice, no source: 1 mm too high on 60 m2 is 4 bags; allowances on top. */
  @Test
  void oneMillimetreOnSixtySquareMetres() {
    int more = BagOdds.likely(3.060, 60, SHEET) - BagOdds.likely(3.000, 60, SHEET);
    assertEquals(4 * ALLOWANCES, more, 1);
  }

  /** With a large pour the quantiles are those of the sum of both errors, to first order. */
  @ParameterizedTest
  @CsvSource({"100, 20000", "1000, 20000"})
  void spreadIsThatOfPlacingAndYield(double volume, double area) {
    Bags bags = certain(volume, area, 0.95);
    double middle = (volume + area * 0.0009) / 0.015 * ALLOWANCES;
    double share =
        Math.hypot(
            area * Math.hypot(0.0005, 0.0002) / (volume + area * 0.0009),
            Math.hypot(0.03, 0.0065 / 1.03));
    NormalDistribution normal = new NormalDistribution(middle, middle * share);
    assertEquals(1, bags.p50() / middle, 0.005);
    assertEquals(1, bags.p10() / normal.inverseCumulativeProbability(0.1), 0.007);
    assertEquals(1, bags.p90() / normal.inverseCumulativeProbability(0.9), 0.007);
    assertEquals(1, bags.order() / normal.inverseCumulativeProbability(0.95), 0.007);
  }

  @Test
  void theSpreadOfTheSurveyCounts() {
    double[] areas = {60, 60, 60, 60};
    Bags sure = BagOdds.of(new double[] {.6, .6, .6, .6}, areas, SHEET, 0.9, 1);
    Bags unsure = BagOdds.of(new double[] {.4, .5, .7, .8}, areas, SHEET, 0.9, 1);
    assertEquals(sure.likely(), unsure.likely(), 1);
    assertTrue(unsure.p90() > sure.p90() + 5);
    assertTrue(unsure.p10() < sure.p10() - 5);
  }

  @Test
  void nothingPouredTakesNoBags() {
    assertEquals(new Bags(0, 0, 0, 0, 0, 0), certain(0, 0, 0.9));
    assertEquals(new Bags(0, 0, 0, 0, 0, 0), certain(0, 20, 0.9));
    assertEquals(0, BagOdds.likely(0, 0, SHEET));
  }

  @Test
  void aSplashTakesABagAndAReserve() {
    Bags bags = certain(0.001, 0.1, 0.9);
    assertEquals(new Bags(1, 1, 1, 1, 2, bags.leftOver()), bags);
    assertEquals(2 - (0.001 + 0.1 * 0.0009) / 0.015 * ALLOWANCES, bags.leftOver(), 0.002);
  }

  /**
   * A normal number of bags leaves order - mean + the tail's loss (standard newsvendor formula).
   */
  @Test
  void bagsLeftOver() {
    Bags bags = certain(100, 20_000, 0.9);
    double mean = (100 + 20_000 * 0.0009) / 0.015 * ALLOWANCES;
    double share =
        Math.hypot(
            20_000 * Math.hypot(0.0005, 0.0002) / (100 + 20_000 * 0.0009),
            Math.hypot(0.03, 0.0065 / 1.03));
    double z = (bags.order() - mean) / (mean * share);
    NormalDistribution normal = new NormalDistribution();
    double left = mean * share * (z * normal.cumulativeProbability(z) + normal.density(z));
    assertEquals(1, bags.leftOver() / left, 0.02);
  }

  @Test
  void sameSeedSameBags() {
    assertEquals(certain(3, 300, 0.9), certain(3, 300, 0.9));
  }

  @Test
  void moreVolumeAndMoreConfidenceNeverMeanFewerBags() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 30; i++) {
      double area = random.nextDouble(1, 500);
      double volume = area * random.nextDouble(0.001, 0.03);
      double confidence = random.nextDouble(0.05, 0.9);
      Bags bags = certain(volume, area, confidence);
      Bags more = certain(volume * random.nextDouble(1, 1.1), area, confidence);
      Bags surer = certain(volume, area, confidence + 0.09);
      assertTrue(more.p10() >= bags.p10() && more.order() >= bags.order());
      assertTrue(more.likely() >= bags.likely() && more.p90() >= bags.p90());
      assertTrue(surer.order() >= bags.order());
      assertTrue(bags.p10() <= bags.p50() && bags.p50() <= bags.p90());
      assertTrue(bags.order() >= 1.05 * bags.likely());
    }
  }

  @Test
  void refusesWhatMakesNoSense() {
    double[] one = {1};
    Class<IllegalArgumentException> refused = IllegalArgumentException.class;
    assertThrows(refused, () -> BagOdds.of(new double[0], new double[0], SHEET, 0.9, 1));
    assertThrows(refused, () -> BagOdds.of(one, new double[2], SHEET, 0.9, 1));
    assertThrows(refused, () -> BagOdds.of(one, one, SHEET, 1, 1));
    assertThrows(refused, () -> BagOdds.of(one, one, SHEET, 0, 1));
  }

  private static Bags certain(double volume, double area, double confidence) {
    return BagOdds.of(new double[] {volume}, new double[] {area}, SHEET, confidence, 1);
  }
}
