package dev.fillplane.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.FindingsException;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.MaterialWish;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Absorbency;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Bags without a survey, of the usual sheet: 25 kg and 5 L make 15 L. */
class BagCounterTest {

  @Test
  void aLayerOfOneThickness() {
    BagCount count = BagCounter.count(layer(20, 0.005));
    assertEquals(0.1, count.fill(), 1e-12);
    assertEquals(BagOdds.likely(0.1, 20, Catalogue.usual()), count.bags().likely());
    assertEquals(9, count.bags().likely());
    assertEquals(count.bags().order() * 0.005, count.mixWater(), 1e-12);
    assertEquals(count.bags().order() * 25.0, count.mass(), 1e-12);
    assertEquals(new Primer(20 / 8000.0, 1), count.primer());
    assertEquals(List.of(), count.warnings());
  }

  /**
   * Bags at a thickness are area times thickness by coverage: an open vocational flooring unit,
   * number derived: 15.11 m2 at 3 mm with 13 m2 a bag at 1 mm is 3.487. On top come 0.9 mm of
   * placing and texture, residue and waste.
   */
  @Test
  void bagsAtAThickness() {
    double bare = 15.11 * 3 / 13;
    assertEquals(3.487, bare, 5e-4);
    MaterialWish thirteenLitres = Sheets.bag(25, 0.004, 0.013);
    BagCount count = BagCounter.count(request(15.11, 0.003, thirteenLitres, null));
    assertEquals(bare, count.fill() / 0.013, 1e-9);
    assertEquals(Math.ceil(bare * 3.9 / 3 * 1.03 / 0.985), count.bags().likely());
    assertEquals(5, count.bags().likely());
  }

  @Test
  void aRangeWidensTheOdds() {
    BagCount range = BagCounter.count(range(100, 0.004, 0.010));
    BagCount even = BagCounter.count(layer(100, 0.007));
    assertEquals(even.fill(), range.fill(), 1e-12);
    assertEquals(even.bags().likely(), range.bags().likely(), 1);
    int thin = BagOdds.likely(100 * 0.0046, 100, Catalogue.usual());
    int thick = BagOdds.likely(100 * 0.0094, 100, Catalogue.usual());
    assertEquals(thin, range.bags().p10(), 1);
    assertEquals(thick, range.bags().p90(), 1);
    assertEquals(even.bags(), BagCounter.count(range(100, 0.007, 0.007)).bags());
  }

  @Test
  void aThickLayerIsPouredInTwoAndPrimedBetween() {
    BagCount count = BagCounter.count(range(20, 0.010, 0.040));
    assertEquals(List.of("deeper-than-one-lift #/thicknessRange"), warnings(count));
    assertEquals(2 * 20 / 8000.0, count.primer().liquid(), 1e-12);
  }

  @Test
  void aThicknessThatNoLayersFitIsAWarning() {
    BagCount count = BagCounter.count(request(20, 0.015, Sheets.lifts(0.010, 0.012), null));
    assertEquals(
        List.of("deeper-than-one-lift #/thickness", "lift-too-thin #/thickness"), warnings(count));
  }

  @Test
  void aThinLayerIsAWarning() {
    BagCount count = BagCounter.count(layer(20, 0.002));
    assertEquals(List.of("thinner-than-sheet #/thickness"), warnings(count));
  }

  @Test
  void moreConfidenceNeverMeansFewerBags() {
    int before = 0;
    for (double confidence = 0.1; confidence < 1; confidence += 0.1) {
      int order = BagCounter.count(request(300, 0.006, Sheets.usual(), confidence)).bags().order();
      assertTrue(order >= before);
      before = order;
    }
  }

  @Test
  void withoutAMaterialTheUsualOneIsAssumed() {
    BagCount count = BagCounter.count(request(20, 0.005, null, null));
    assertEquals(List.of("material-assumed #/material"), warnings(count));
  }

  @Test
  void exactlyOneOfThicknessAndRange() {
    assertRefused("thickness-or-range #", request(20, OptionalDouble.empty(), Optional.empty()));
    assertRefused(
        "thickness-or-range #",
        request(20, OptionalDouble.of(0.005), Optional.of(new ThicknessRange(0.004, 0.006))));
  }

  @Test
  void valuesThatMustBePositive() {
    assertRefused("not-positive #/area", layer(0, 0.005));
    assertRefused("not-positive #/area", layer(-1, 0.005));
    assertRefused("not-positive #/thickness", layer(20, 0));
    assertRefused("not-positive #/thicknessRange/to", range(20, 0, 0));
    assertRefused("negative #/thicknessRange/from", range(20, -0.001, 0.01));
    assertRefused("range-upside-down #/thicknessRange", range(20, 0.01, 0.005));
    assertRefused("area-too-large #/area", layer(1.1e6, 0.005));
    assertRefused("too-many-lifts #/thickness", layer(20, 0.7));
  }

  @Test
  void confidenceLiesBetweenZeroAndOne() {
    assertRefused("confidence-outside #/confidence", request(20, 0.005, Sheets.usual(), 0.0));
    assertRefused("confidence-outside #/confidence", request(20, 0.005, Sheets.usual(), 1.0));
  }

  private static void assertRefused(String error, BagCountRequest request) {
    FindingsException refused =
        assertThrows(FindingsException.class, () -> BagCounter.count(request));
    assertEquals(List.of(error), refused.errors().stream().map(BagCounterTest::text).toList());
  }

  private static BagCountRequest layer(double area, double thickness) {
    return request(area, OptionalDouble.of(thickness), Optional.empty());
  }

  private static BagCountRequest range(double area, double from, double to) {
    return request(area, OptionalDouble.empty(), Optional.of(new ThicknessRange(from, to)));
  }

  private static BagCountRequest request(
      double area, OptionalDouble thickness, Optional<ThicknessRange> range) {
    return new BagCountRequest(
        UnitSystem.METRIC, area, thickness, range, Sheets.usual(), Absorbency.NORMAL, null);
  }

  private static BagCountRequest request(
      double area, double thickness, MaterialWish material, Double confidence) {
    return new BagCountRequest(
        UnitSystem.METRIC,
        area,
        OptionalDouble.of(thickness),
        Optional.empty(),
        material,
        null,
        confidence);
  }

  private static List<String> warnings(BagCount count) {
    return count.warnings().stream().map(BagCounterTest::text).toList();
  }

  private static String text(Finding finding) {
    return finding.code() + " " + finding.place();
  }
}
