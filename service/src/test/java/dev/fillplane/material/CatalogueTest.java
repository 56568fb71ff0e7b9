package dev.fillplane.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What becomes of a material that was told in full, in part, or not at all. */
class CatalogueTest {

  private static final double LITRE = 1e-3;
  private static final double CUBIC_FOOT = 0.3048 * 0.3048 * 0.3048;
  private static final double SQUARE_FOOT = 0.3048 * 0.3048;
  private static final double POUND = 0.45359237;
  private static final double US_QUART = 0.946352946 * LITRE;

  private final Findings findings = new Findings();

  @Test
  void nothingToldIsTheUsualSheetWithAWarning() {
    assertEquals(Catalogue.usual(), resolve(MaterialWish.usual()));
    assertEquals(List.of("material-assumed #/material"), warnings());
  }

  @Test
  void anIdAloneIsTheSheetOfTheCatalogue() {
    for (DataSheet sheet : Catalogue.sheets()) {
      DataSheet found = resolve(Wishes.of(sheet.id().orElseThrow()).wish());
      assertEquals(sheet.yieldPerBag(), found.yieldPerBag(), 1e-12);
      assertEquals(sheet.coveringAfter(), found.coveringAfter());
      assertEquals(sheet.binder(), found.binder());
    }
    assertEquals(List.of(), warnings());
  }

  @Test
  void toldValuesTakeThePlaceOfTheCatalogue() {
    Wishes wishes = Wishes.of("cement-standard-25").tell("workingTime", 1200);
    DataSheet sheet = resolve(wishes.tell("waterPerBag", 0.00505).wish());
    assertEquals(1200, sheet.workingTime());
    assertEquals(0.6 * 1200, sheet.healingTime(), 1e-9);
    assertEquals(30.05 / 2000, sheet.yieldPerBag(), 1e-12);
    assertEquals(List.of("healing-time-assumed #/material"), warnings());
  }

  @Test
  void aBagMassToldScalesTheBagOfTheCatalogue() {
    DataSheet sheet = resolve(Wishes.of("cement-standard-25").tell("bagMass", 20).wish());
    assertEquals(4 * LITRE, sheet.waterPerBag(), 1e-12);
    assertEquals(12 * LITRE, sheet.yieldPerBag(), 1e-12);
    assertEquals(List.of(), warnings());
  }

  @Test
  void whatIsLeftGetsItsDefaults() {
    DataSheet sheet = resolve(Wishes.bag().wish());
    assertEquals(Binder.CEMENT, sheet.binder());
    assertEquals(2000, sheet.wetDensity(), 1e-9);
    assertEquals(0.0049, sheet.waterRange().from(), 1e-12);
    assertEquals(0.0051, sheet.waterRange().to(), 1e-12);
    assertEquals(new TemperatureRange(10, 30), sheet.temperatureRange());
    assertEquals(900, sheet.workingTime());
    assertEquals(540, sheet.healingTime(), 1e-9);
    assertEquals(20, sheet.workingTimeAt());
    assertEquals(180, sheet.mixTime());
    assertEquals(8000, sheet.primerCoverage());
    assertEquals(3 * 3600, sheet.walkOn());
    assertEquals(24 * 3600, sheet.coveringAfter());
    assertEquals(
        List.of("working-time-assumed #/material", "healing-time-assumed #/material"), warnings());
  }

  @Test
  void aHealingTimeAloneTellsTheWorkingTime() {
    assertEquals(1500, resolve(Wishes.bag().tell("healingTime", 900).wish()).workingTime(), 1e-9);
    assertEquals(List.of("working-time-assumed #/material"), warnings());
  }

  @Test
  void aDefaultLiftNeverContradictsTheOneThatIsTold() {
    assertEquals(0.04, resolve(Wishes.bag().tell("minimumLift", 0.04).wish()).maximumLift());
    assertEquals(0.002, resolve(Wishes.bag().tell("maximumLift", 0.002).wish()).minimumLift());
  }

  /** 25 to 50 % of the bag, from 25 mm, neat cap 3 mm: common practice, no source. */
  @Test
  void aggregateIsThatOfTheCatalogueOrAsTold() {
    Aggregate usual = new Aggregate(0.25, 0.5, 0.025, 0.003, 2650.0);
    assertEquals(Optional.of(usual), resolve(Wishes.of("cement-deep-25").wish()).aggregate());
    assertEquals(Optional.empty(), resolve(Wishes.of("cement-thin-25").wish()).aggregate());
    assertEquals(Optional.empty(), resolve(Wishes.bag().wish()).aggregate());
    Aggregate told = new Aggregate(null, 0.3, null, null, null);
    Wishes wishes = Wishes.of("cement-deep-25").aggregate(told);
    assertEquals(Optional.of(told), resolve(wishes.wish()).aggregate());
  }

  @Test
  void aDefaultOfAggregateNeverContradictsWhatIsTold() {
    assertEquals(0.2, new Aggregate(null, 0.2, null, null, null).shareFrom());
    assertEquals(0.7, new Aggregate(0.7, null, null, null, null).shareTo());
    assertEquals(0.001, new Aggregate(null, null, 0.002, null, null).neatCap());
    assertEquals(0.040, new Aggregate(null, null, null, 0.020, null).minimumDepth());
    assertThrows(IllegalArgumentException.class, () -> new Aggregate(null, 1.1, null, null, null));
  }

  /** Mass balance, derived: 25 kg and 5.0 L at 2.00 kg/L make 15.0 L. */
  @Test
  void yieldFollowsFromTheDensity() {
    Wishes wishes = Wishes.bag().without("yieldPerBag").tell("wetDensity", 2000);
    DataSheet sheet = resolve(wishes.wish());
    assertEquals(15.0 * LITRE, sheet.yieldPerBag(), 1e-12);
    assertEquals(1.667, sheet.bagMass() / sheet.yieldPerBag() / 1000, 5e-4);
    assertEquals(3.0, sheet.yieldPerBag() / 0.005, 1e-9);
  }

  /**
   * Mass balance, derived: 50 lb and 5.25 US qt at 2.00 kg/L make 0.4882 ft3, 46.9 ft2 at 1/8 in.
   */
  @Test
  void yieldOfAFiftyPoundBag() {
    DataSheet sheet = resolve(fiftyPounds(5.25, 2000));
    assertEquals(0.4882, sheet.yieldPerBag() / CUBIC_FOOT, 1e-4);
    assertEquals(46.9, sheet.yieldPerBag() / (0.0254 / 8) / SQUARE_FOOT, 0.05);
  }

  /** Six US quarts to a 50 lb bag give 0.47 to 0.52 ft3: common practice, no source. */
  @Test
  void sixQuartsToAFiftyPoundBag() {
    for (double density : new double[] {1950, 2000, 2050}) {
      assertBetween(0.47, 0.52, resolve(fiftyPounds(6, density)).yieldPerBag() / CUBIC_FOOT);
    }
    DataSheet invented = Catalogue.find("cement-standard-50lb").orElseThrow();
    assertBetween(0.47, 0.52, invented.yieldPerBag() / CUBIC_FOOT);
  }

  /**
   * Powder 1.6 to 1.8 kg per m2 and mm, wet 1.95 to 2.15 kg/L, water 0.18 to 0.26 of the powder:
   * common practice, no source.
   */
  @Test
  void theCatalogueKeepsToTheRulesOfThumb() {
    for (DataSheet sheet : Catalogue.sheets()) {
      assertBetween(1.6, 1.8, sheet.bagMass() / sheet.yieldPerBag() / 1000);
      assertBetween(1950, 2150, sheet.wetDensity());
      assertBetween(0.18, 0.26, 1000 * sheet.waterPerBag() / sheet.bagMass());
      assertBetween(2 * 3600, 4 * 3600, sheet.walkOn());
    }
    assertEquals(6, Catalogue.sheets().size());
  }

  private static MaterialWish fiftyPounds(double quarts, double density) {
    return new Wishes()
        .tell("bagMass", 50 * POUND)
        .tell("waterPerBag", quarts * US_QUART)
        .tell("wetDensity", density)
        .wish();
  }

  private static void assertBetween(double from, double to, double value) {
    assertTrue(from <= value && value <= to, value + " is not in " + from + ".." + to);
  }

  private DataSheet resolve(MaterialWish wish) {
    DataSheet sheet = Catalogue.resolve(wish, Place.root().at("material"), findings);
    assertEquals(List.of(), findings.errors());
    return sheet;
  }

  private List<String> warnings() {
    return findings.warnings().stream().map(CatalogueTest::text).toList();
  }

  private static String text(Finding finding) {
    return finding.code() + " " + finding.place();
  }
}
