package dev.fillplane.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Times by temperature, on a sheet of 15 and 9 minutes at 20 C, allowed from 10 to 30 C. */
class WorkingTimeTest {

  private static final DataSheet SHEET = Catalogue.usual();
  private static final WorkingTime TIMES = WorkingTime.of(SHEET);
  private static final double ROUNDING = 1e-9;

  @ParameterizedTest
  @CsvFileSource(resources = "rates.csv", useHeadersInDisplayName = true)
  void rate(double energy, double temperature, double rate) {
    assertEquals(rate, Arrhenius.rate(temperature, 20, energy), Math.max(6e-4, 1e-3 * rate));
  }

  /** Four rules of the trade lie within 12 % of their mean, and ours is one of them. */
  @ParameterizedTest
  @CsvFileSource(resources = "ten-minutes-at-73F.csv", useHeadersInDisplayName = true)
  void tenMinutesAt73Fahrenheit(
      double fahrenheit, double thirdPer10F, double halfPer20F, double halfPer10C, double ea40) {
    double ours = tenMinutes(fahrenheit);
    assertEquals(ea40, ours, 0.05);
    double mean = (thirdPer10F + halfPer20F + halfPer10C + ea40) / 4;
    for (double rule : new double[] {thirdPer10F, halfPer20F, halfPer10C, ours}) {
      assertEquals(1, rule / mean, 0.12);
    }
  }

  /** The same rules by their formulas, anywhere from 50 to 90 F. */
  @Test
  void fourRulesLieWithin12PercentOfTheirMean() {
    SplittableRandom random = new SplittableRandom(14);
    for (int i = 0; i < 300; i++) {
      double fahrenheit = random.nextDouble(50, 90);
      double warmer = fahrenheit - 73;
      double[] rules = {
        10 * Math.pow(1.5, -warmer / 10),
        10 * Math.pow(2, -warmer / 20),
        10 * Math.pow(2, -warmer / 18),
        tenMinutes(fahrenheit)
      };
      double mean = Arrays.stream(rules).average().orElseThrow();
      for (double rule : rules) {
        assertEquals(1, rule / mean, 0.12, () -> "at " + fahrenheit + " F");
      }
    }
  }

  private static double tenMinutes(double fahrenheit) {
    Units us = Units.of("us");
    return 10 / Arrhenius.rate(us.temperature(fahrenheit), us.temperature(73), 40_000);
  }

  @Test
  void atTheTemperatureOfTheSheetItsTimesHold() {
    assertEquals(900, TIMES.workingTime(20), ROUNDING);
    for (double depth : new double[] {0, 0.003, 0.010, 0.050}) {
      assertEquals(900, TIMES.workingTime(20, 20, depth), ROUNDING);
      assertEquals(540, TIMES.healingTime(20, 20, depth), ROUNDING);
    }
  }

  @Test
  void warmthShortensByTheRate() {
    assertEquals(900 / 1.317, TIMES.workingTime(25), 0.5);
    assertEquals(900 / 1.718, TIMES.workingTime(30), 0.5);
  }

  /** Common practice, no source. */
  @Test
  void coldIsCreditedWithAQuarterAtMost() {
    assertEquals(1.25 * 900, TIMES.workingTime(10), ROUNDING);
    assertEquals(1.25 * 540, TIMES.healingTime(10, 12, 0.010), ROUNDING);
    assertTrue(TIMES.workingTime(18) < 1.25 * 900);
  }

  /** 15 minutes at 20 C and 10 at 30 C: both hold, and so they do told the other way round. */
  @Test
  void bothTimesOfASheetHold() {
    WorkingTime times = WorkingTime.of(SheetsOfTwoTimes.sheet(900, 20, 600, 30));
    WorkingTime swapped = WorkingTime.of(SheetsOfTwoTimes.sheet(600, 30, 900, 20));
    assertEquals(900, times.workingTime(20), 1e-6);
    assertEquals(600, times.workingTime(30), 1e-6);
    for (double mix = 10; mix <= 30; mix += 2.5) {
      assertEquals(times.workingTime(mix), swapped.workingTime(mix), 1e-6);
    }
  }

  /** A time that the sheet states for the cold is no credit of ours. */
  @Test
  void aLongTimeForTheColdHoldsWhereItIsStated() {
    WorkingTime times = WorkingTime.of(SheetsOfTwoTimes.sheet(900, 20, 1500, 10));
    assertEquals(1500, times.workingTime(10), 1e-6);
    assertEquals(1.25 * 900, TIMES.workingTime(10), ROUNDING);
    assertEquals(0.6 * 1500, times.healingTime(10, 10, 0.010), 1e-6);
  }

  @Test
  void aLowerActivationEnergyMakesTheDayMatterLess() {
    WorkingTime dull = WorkingTime.of(SheetsOfTwoTimes.sheet(20_000));
    WorkingTime keen = WorkingTime.of(SheetsOfTwoTimes.sheet(80_000));
    assertEquals(900 / Math.sqrt(1.718), dull.workingTime(30), 0.5);
    assertEquals(900 / (1.718 * 1.718), keen.workingTime(30), 0.5);
    assertEquals(900, keen.workingTime(20), ROUNDING);
  }

  @Test
  void outsideTheSheetTheEndOfItsRangeHolds() {
    assertEquals(TIMES.workingTime(30), TIMES.workingTime(45), ROUNDING);
    assertEquals(TIMES.workingTime(30), TIMES.workingTime(30, 45, 0.005), ROUNDING);
  }

  /** Common practice, no source: derived from conduction into concrete. */
  @ParameterizedTest
  @CsvSource({
    "5, .50, .25, .18",
    "10, .74, .46, .34",
    "20, .87, .70, .59",
    "7.5, .62, .355, .26",
    "40, .87, .70, .59",
    "0, 0, 0, 0"
  })
  void shareLeftAfterOneFiveAndTenMinutes(
      double millimetres, double afterOne, double afterFive, double afterTen) {
    double depth = millimetres / 1000;
    assertEquals(afterOne, SlabShare.left(depth, 60), ROUNDING);
    assertEquals(afterFive, SlabShare.left(depth, 300), ROUNDING);
    assertEquals(afterTen, SlabShare.left(depth, 600), ROUNDING);
    assertEquals(1, SlabShare.left(depth, 0), ROUNDING);
    assertEquals(0, SlabShare.left(depth, 3600), ROUNDING);
    assertEquals(0, SlabShare.left(depth, 1e6), ROUNDING);
    assertEquals((afterOne + afterFive) / 2, SlabShare.left(depth, 180), ROUNDING);
  }

  /** A plain integration in steps of 0.1 s is the reference. */
  @Test
  void theStepIsFineEnough() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 50; i++) {
      double mix = random.nextDouble(12, 32);
      double slab = random.nextDouble(12, 32);
      double depth = random.nextDouble(0, 0.03);
      assertEquals(reference(mix, slab, depth), TIMES.workingTime(mix, slab, depth), 1);
    }
  }

  private static double reference(double mix, double slab, double depth) {
    double age = 0;
    double time = 0;
    while (age < 900 && time < 1125) {
      double share = time < 180 ? 1 : SlabShare.left(depth, time - 180);
      double temperature = slab + share * (mix - slab);
      age += 0.1 * Arrhenius.rate(Math.max(10, Math.min(30, temperature)), 20, 40_000);
      time += 0.1;
    }
    return time;
  }

  @Test
  void coolerMixAndCoolerSlabNeverShorten() {
    SplittableRandom random = new SplittableRandom(12);
    for (int i = 0; i < 300; i++) {
      double mix = random.nextDouble(5, 40);
      double slab = random.nextDouble(5, 40);
      double depth = random.nextDouble(0, 0.04);
      double cooler = random.nextDouble(0, 10);
      double time = TIMES.workingTime(mix, slab, depth);
      assertTrue(TIMES.workingTime(mix - cooler, slab, depth) >= time - ROUNDING);
      assertTrue(TIMES.workingTime(mix, slab - cooler, depth) >= time - ROUNDING);
    }
  }

  @Test
  void onAHotSlabADeeperCoolPourNeverShortens() {
    SplittableRandom random = new SplittableRandom(13);
    for (int i = 0; i < 300; i++) {
      double mix = random.nextDouble(12, 30);
      double slab = mix + random.nextDouble(0, 15);
      double depth = random.nextDouble(0, 0.03);
      double deeper = depth + random.nextDouble(0, 0.02);
      assertTrue(
          TIMES.healingTime(mix, slab, deeper) >= TIMES.healingTime(mix, slab, depth) - ROUNDING);
    }
    assertTrue(TIMES.workingTime(15, 30, 0.020) > TIMES.workingTime(15, 30, 0.005) + 60);
  }
}
