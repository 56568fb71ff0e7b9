package dev.fillplane.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Layers of boxes and wedges 8 m long and 1 m wide; the usual sheet allows 3 to 30 mm. */
class LiftsTest {

  private static final DataSheet SHEET = Catalogue.usual();
  private static final double ROUNDING = 1e-9;

  private final Findings findings = new Findings();

  @Test
  void oneLayerIsTheWholePour() {
    List<Lift> lifts = lifts(new Wedge(0.010, 0.030), SHEET);
    assertEquals(1, lifts.size());
    assertLift(1, 8, 8 * 0.020, 0.030, 0, lifts.get(0));
    assertEquals(List.of(), codes());
  }

  /** 32 mm with a maximum of 30 is 20 + 12, never 30 + 2 (common practice, no source). */
  @Test
  void twoLayersOfABox() {
    List<Lift> lifts = lifts(new Wedge(0.032, 0.032), SHEET);
    assertEquals(2, lifts.size());
    assertLift(1, 8, 8 * 0.020, 0.020, 0, lifts.get(0));
    assertLift(2, 8, 8 * 0.012, 0.012, 0, lifts.get(1));
    assertEquals(List.of("deeper-than-one-lift"), codes());
  }

  /**
   * 160 L and 96 L, with 1.03 / 0.985 for waste and residue, 15 L a bag: 11.7 and 6.7 bags. The 7.2
   * L of placing and texture are in the first, which alone lies on the floor.
   */
  @Test
  void placingAndTextureCountOnceForAPlace() {
    List<Lift> lifts = lifts(new Wedge(0.032, 0.032), SHEET);
    assertEquals(List.of(12, 7), lifts.stream().map(Lift::bags).toList());
  }

  /** 4 mm deeper with every metre: over 12 mm from 3 m on, over 15 mm 0.75 m further. */
  @Test
  void theFirstLayerFillsTheDeepPartAndHasAThinRim() {
    List<Lift> lifts = lifts(new Wedge(0, 0.032), SHEET);
    assertEquals(2, lifts.size());
    assertLift(1, 5, 5 * 0.010, 0.020, 0.75, lifts.get(0));
    assertLift(2, 8, 8 * 0.016 - 5 * 0.010, 0.012, 0.75, lifts.get(1));
    assertEquals(List.of("deeper-than-one-lift", "lift-rim-thin"), codes());
    assertEquals(0.75, warned("lift-rim-thin", "area"), 1e-6);
  }

  /** 65 mm with a maximum of 30 are 26.5, 26.5 and 12 on a fall of 8.125 mm a metre. */
  @Test
  void threeLayers() {
    List<Lift> lifts = lifts(new Wedge(0, 0.065), SHEET);
    double metres = 8 / 0.065;
    assertLift(
        1, metres * 0.0265, metres * 0.0265 * 0.0265 / 2, 0.0265, metres * 0.003, lifts.get(0));
    double toSecond = metres * 0.053 * 0.053 / 2;
    assertLift(
        2, metres * 0.053, toSecond - lifts.get(0).volume(), 0.0265, metres * 0.003, lifts.get(1));
    assertLift(3, 8, 8 * 0.0325 - toSecond, 0.012, metres * 0.003, lifts.get(2));
  }

  @Test
  void anUnderlaymentForFeatherEdgesHasNoThinRim() {
    List<Lift> lifts = lifts(new Wedge(0, 0.032), Sheets.withLifts(0, 0.030));
    assertEquals(0, lifts.get(0).thinArea());
    assertEquals(0, lifts.get(1).thinArea());
    assertEquals(List.of("deeper-than-one-lift"), codes());
  }

  /** Each rounded up, so that they come to at most a bag less one for each layer more. */
  @Test
  void layersTogetherTakeTheBagsOfTheWhole() {
    for (double deepest : new double[] {0.031, 0.060, 0.0601, 0.1, 0.3}) {
      Wedge wedge = new Wedge(0.004, deepest);
      List<Lift> lifts = lifts(wedge, SHEET);
      double whole = BagOdds.expected(wedge.summary().volume(), 8, SHEET);
      int sum = lifts.stream().mapToInt(Lift::bags).sum();
      assertTrue(sum >= whole && sum < whole + lifts.size(), sum + " of " + whole);
    }
  }

  @Test
  void nothingPouredHasNoLayers() {
    assertEquals(List.of(), lifts(new Wedge(-0.02, -0.01), SHEET));
    assertEquals(List.of(), lifts(new Wedge(0, 0), SHEET));
  }

  @Test
  void aDepthThatNoLayersFitIsAWarning() {
    List<Lift> lifts = lifts(new Wedge(0.015, 0.015), Sheets.withLifts(0.010, 0.012));
    assertLift(1, 8, 8 * 0.0075, 0.0075, 8, lifts.get(0));
    assertLift(2, 8, 8 * 0.0075, 0.0075, 8, lifts.get(1));
    assertEquals(List.of("deeper-than-one-lift", "lift-too-thin"), codes());
    assertEquals(0.012, warned("lift-too-thin", "most"), ROUNDING);
    assertEquals(0.020, warned("lift-too-thin", "least"), ROUNDING);
  }

  @Test
  void aPitIsRefused() {
    lifts(new Wedge(0.01, 0.61), SHEET);
    assertEquals(List.of("too-many-lifts"), codes());
    assertTrue(findings.hasErrors());
    assertEquals("#/material", findings.errors().get(0).place().toString());
  }

  private static void assertLift(
      int number, double area, double volume, double thickness, double thin, Lift lift) {
    assertEquals(number, lift.number());
    assertEquals(area, lift.area(), ROUNDING);
    assertEquals(volume, lift.volume(), ROUNDING);
    assertEquals(thickness, lift.maximumDepth(), ROUNDING);
    assertEquals(thin, lift.thinArea(), 1e-6);
  }

  private List<Lift> lifts(Wedge wedge, DataSheet sheet) {
    PrimerNeed primer = new PrimerNeed(List.of(), sheet);
    return new Lifts(wedge, wedge.summary(), sheet, primer, 3600)
        .layers(Place.root().at("material"), findings);
  }

  private double warned(String code, String name) {
    Finding finding =
        findings.warnings().stream().filter(f -> f.code().equals(code)).findFirst().orElseThrow();
    return ((Amount) finding.values().get(name)).si();
  }

  private List<String> codes() {
    return Stream.concat(findings.errors().stream(), findings.warnings().stream())
        .map(Finding::code)
        .toList();
  }
}
