package dev.fillplane.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A sheet that contradicts itself is refused at the place of the contradiction. */
class SheetErrorsTest {

  @Test
  void anUnknownIdIsAnsweredWithTheKnownOnes() {
    Finding error = onlyError(Wishes.of("cement-gold"));
    assertFinding("unknown-material", "#/material/id", error);
    assertEquals("cement-gold", error.values().get("id"));
    assertTrue(error.values().get("known").toString().startsWith("cement-standard-25, cement-"));
  }

  @Test
  void withoutAnIdEachMissingValueIsNamed() {
    List<Finding> errors = errors(new Wishes().tell("workingTime", 900));
    assertEquals(
        List.of("bagMass", "waterPerBag", "yieldPerBag or wetDensity"),
        errors.stream().map(error -> error.values().get("name")).toList());
    errors.forEach(error -> assertFinding("sheet-value-missing", "#/material", error));
    assertEquals(1, errors(Wishes.bag().without("waterPerBag")).size());
  }

  @Test
  void yieldAndDensityThatDisagree() {
    Finding error = onlyError(Wishes.bag().tell("wetDensity", 1890));
    assertFinding("sheet-yield-contradicts-density", "#/material/yieldPerBag", error);
    assertEquals(0.015, ((Amount) error.values().get("told")).si());
    assertEquals(30 / 1890.0, ((Amount) error.values().get("balanced")).si(), 1e-12);
    assertEquals(List.of(), errors(Wishes.bag().tell("wetDensity", 1910)));
  }

  @Test
  void waterOutsideTheRange() {
    assertRefused("water-outside-sheet", "waterPerBag", Wishes.bag().water(0.0051, 0.006));
    assertRefused("water-outside-sheet", "waterPerBag", Wishes.bag().water(0.004, 0.0049));
    assertRefused(
        "water-outside-sheet",
        "waterPerBag",
        Wishes.of("cement-standard-25").tell("waterPerBag", 0.0055));
    assertRefused(
        "water-outside-sheet", "waterRange", Wishes.of("cement-standard-25").water(0.0055, 0.006));
    assertEquals(List.of(), errors(Wishes.bag().water(0.005, 0.005)));
  }

  @Test
  void waterThatNoPowderTakes() {
    Wishes flood = Wishes.bag().tell("waterPerBag", 0.013).tell("yieldPerBag", 0.019);
    assertRefused("water-powder-ratio", "waterPerBag", flood);
    Wishes dust = Wishes.bag().tell("waterPerBag", 0.002).tell("yieldPerBag", 0.0135);
    assertRefused("water-powder-ratio", "waterPerBag", dust);
  }

  @Test
  void rangesThatStandUpsideDown() {
    assertRefused("range-upside-down", "waterRange", Wishes.bag().water(0.006, 0.004));
    assertRefused("range-upside-down", "temperatureRange", Wishes.bag().temperatures(30, 10));
    Wishes lifts = Wishes.bag().tell("minimumLift", 0.03).tell("maximumLift", 0.02);
    assertRefused("lift-range-upside-down", "minimumLift", lifts);
    Wishes lift = Wishes.of("cement-deep-25").tell("maximumLift", 0.004);
    assertRefused("lift-range-upside-down", "maximumLift", lift);
  }

  @Test
  void healingThatOutlastsTheWorkingTime() {
    Wishes wishes = Wishes.bag().tell("workingTime", 600).tell("healingTime", 601);
    assertRefused("healing-above-working", "healingTime", wishes);
    assertEquals(List.of(), errors(wishes.tell("healingTime", 600)));
  }

  @Test
  void timesAtTwoTemperaturesThatContradict() {
    String code = "times-contradict";
    assertRefused(code, "secondTime", Wishes.of("cement-standard-25").second(1000, 30));
    assertRefused(code, "secondTime", Wishes.of("cement-standard-25").second(800, 10));
    assertRefused(code, "secondTime", Wishes.of("cement-standard-25").second(900, 10));
    assertRefused(code, "secondTime", Wishes.of("cement-standard-25").second(60, 30));
    assertEquals(List.of(), errors(Wishes.of("cement-standard-25").second(600, 30)));
    assertRefused(
        "times-too-near",
        "secondTime/workingTimeAt",
        Wishes.of("cement-standard-25").second(850, 21.9));
    assertEquals(List.of(), errors(Wishes.of("cement-standard-25").second(800, 22)));
  }

  /** 15 minutes at 20 C and 10 at 30 C: R ln 1.5 / (1/293.15 - 1/303.15) = 29.96 kJ/mol. */
  @Test
  void activationEnergyThatContradictsTheTimes() {
    Wishes wishes = Wishes.of("cement-standard-25").second(600, 30);
    assertEquals(29_958, resolve(wishes, new Findings()).activationEnergy(), 5);
    Wishes told = wishes.tell("activationEnergy", 40_000);
    assertRefused("energy-contradicts-times", "activationEnergy", told);
    assertEquals(List.of(), errors(wishes.tell("activationEnergy", 31_000)));
  }

  @Test
  void activationEnergyOutOfRange() {
    assertRefused("out-of-range", "activationEnergy", Wishes.bag().tell("activationEnergy", 9_999));
    assertRefused(
        "out-of-range", "activationEnergy", Wishes.bag().tell("activationEnergy", 15e4 + 1));
    assertEquals(40_000, resolve(Wishes.bag(), new Findings()).activationEnergy());
  }

  @Test
  void aSecondTimeNeedsAFirst() {
    Finding error = onlyError(Wishes.bag().second(600, 30));
    assertFinding("sheet-value-missing", "#/material", error);
    assertEquals("workingTime", error.values().get("name"));
    assertRefused(
        "not-positive", "secondTime", Wishes.bag().tell("workingTime", 900).second(0, 30));
    assertRefused(
        "sheet-temperature-implausible",
        "secondTime",
        Wishes.bag().tell("workingTime", 900).second(600, 61));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bagMass",
        "waterPerBag",
        "yieldPerBag",
        "wetDensity",
        "maximumLift",
        "workingTime",
        "healingTime",
        "mixTime",
        "primerCoverage",
        "walkOn",
        "coveringAfter"
      })
  void valuesThatMustBePositive(String name) {
    assertRefused("not-positive", name, Wishes.bag().tell(name, 0));
    assertRefused("not-positive", name, Wishes.bag().tell(name, -1));
  }

  @Test
  void aMinimumLiftMayBeNothingButNotLess() {
    assertRefused("negative", "minimumLift", Wishes.bag().tell("minimumLift", -0.001));
    assertEquals(List.of(), errors(Wishes.bag().tell("minimumLift", 0)));
    assertRefused("not-positive", "waterRange", Wishes.bag().water(-1, 1));
  }

  @Test
  void temperaturesThatNoCementKnows() {
    String code = "sheet-temperature-implausible";
    assertRefused(code, "workingTimeAt", Wishes.bag().tell("workingTimeAt", -273.15));
    assertRefused(code, "workingTimeAt", Wishes.bag().tell("workingTimeAt", 61));
    assertRefused(code, "temperatureRange", Wishes.bag().temperatures(-1, 30));
    assertRefused(code, "temperatureRange", Wishes.bag().temperatures(10, 61));
  }

  @Test
  void anOddDensityIsOnlyAWarning() {
    Findings findings = new Findings();
    DataSheet sheet = resolve(Wishes.bag().tell("yieldPerBag", 0.012), findings);
    assertEquals(2500, sheet.wetDensity(), 1e-9);
    assertEquals(List.of(), findings.errors());
    assertFinding("sheet-density-odd", "#/material/yieldPerBag", findings.warnings().get(2));
    Findings light = new Findings();
    resolve(Wishes.bag().without("yieldPerBag").tell("wetDensity", 1500), light);
    assertFinding("sheet-density-odd", "#/material/wetDensity", light.warnings().get(2));
  }

  @Test
  void afterAnErrorTheUsualSheetStandsIn() {
    assertEquals(Catalogue.usual(), resolve(Wishes.of("no-such"), new Findings()));
    assertEquals(Catalogue.usual(), resolve(Wishes.bag().water(0.006, 0.007), new Findings()));
  }

  private static void assertRefused(String code, String name, Wishes wishes) {
    assertFinding(code, "#/material/" + name, onlyError(wishes));
  }

  private static void assertFinding(String code, String pointer, Finding finding) {
    assertEquals(code + " " + pointer, finding.code() + " " + finding.place());
  }

  private static Finding onlyError(Wishes wishes) {
    List<Finding> errors = errors(wishes);
    assertEquals(1, errors.size(), errors::toString);
    return errors.get(0);
  }

  private static List<Finding> errors(Wishes wishes) {
    Findings findings = new Findings();
    resolve(wishes, findings);
    return findings.errors();
  }

  private static DataSheet resolve(Wishes wishes, Findings findings) {
    return Catalogue.resolve(wishes.wish(), Place.root().at("material"), findings);
  }
}
