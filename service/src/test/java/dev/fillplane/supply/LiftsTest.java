package dev.fillplane.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Layers of a wedge; the usual sheet allows 3 to 30 mm. */
class LiftsTest {

  private static final DataSheet SHEET = Catalogue.usual();
  private static final double ROUNDING = 1e-9;

  private final Findings findings = new Findings();

  @Test
  void oneLayerIsTheWholePour() {
    assertEquals(List.of(new Lift(1, 8, 8 * 0.015, 0.030)), lifts(new Wedge(0, 0.030), SHEET));
    assertEquals(List.of(), codes());
  }

  /** 32 mm with a maximum of 30 is never 30 + 2 (common practice, no source). */
  @Test
  void twoLayersOfWhichTheFirstFillsTheDeepPart() {
    List<Lift> lifts = lifts(new Wedge(0, 0.032), SHEET);
    assertEquals(2, lifts.size());
    assertLift(1, 4, 4 * 0.008, lifts.get(0));
    assertLift(2, 8, 4 * 0.008 + 4 * 0.016, lifts.get(1));
    assertEquals(List.of("deeper-than-one-lift"), codes());
  }

  private static void assertLift(int number, double area, double volume, Lift lift) {
    assertEquals(number, lift.number());
    assertEquals(area, lift.area(), ROUNDING);
    assertEquals(volume, lift.volume(), ROUNDING);
    assertEquals(0.016, lift.maximumDepth(), ROUNDING);
  }

  @Test
  void layersAddUpToThePour() {
    for (double deepest : new double[] {0.031, 0.060, 0.0601, 0.1, 0.3}) {
      Wedge wedge = new Wedge(0.004, deepest);
      List<Lift> lifts = lifts(wedge, SHEET);
      double volume = lifts.stream().mapToDouble(Lift::volume).sum();
      assertEquals(wedge.summary().volume(), volume, ROUNDING);
      assertEquals(8, lifts.get(lifts.size() - 1).area(), ROUNDING);
      for (int i = 0; i < lifts.size(); i++) {
        assertTrue(lifts.get(i).maximumDepth() <= 0.030 + ROUNDING);
        assertTrue(lifts.get(i).maximumDepth() >= 0.003);
        assertTrue(i == 0 || lifts.get(i).area() >= lifts.get(i - 1).area());
      }
    }
    assertEquals(10, lifts(new Wedge(0.3, 0.3), SHEET).size());
  }

  @Test
  void nothingPouredHasNoLayers() {
    assertEquals(List.of(), lifts(new Wedge(-0.02, -0.01), SHEET));
    assertEquals(List.of(), lifts(new Wedge(0, 0), SHEET));
  }

  @Test
  void layersThatTheSheetFindsTooThinAreAWarning() {
    DataSheet narrow = Sheets.withLifts(0.010, 0.015);
    assertEquals(2, lifts(new Wedge(0.016, 0.016), narrow).size());
    assertEquals(List.of("deeper-than-one-lift", "lift-too-thin"), codes());
  }

  @Test
  void aPitIsRefused() {
    lifts(new Wedge(0, 0.61), SHEET);
    assertEquals(List.of("too-many-lifts"), codes());
    assertTrue(findings.hasErrors());
    assertEquals("#/material", findings.errors().get(0).place().toString());
  }

  private List<Lift> lifts(Wedge wedge, DataSheet sheet) {
    return Lifts.of(wedge.summary(), sheet, Place.root().at("material"), findings);
  }

  private List<String> codes() {
    return Stream.concat(findings.errors().stream(), findings.warnings().stream())
        .map(Finding::code)
        .toList();
  }
}
