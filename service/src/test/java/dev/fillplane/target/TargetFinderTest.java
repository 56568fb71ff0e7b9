package dev.fillplane.target;

import static dev.fillplane.surface.TestFloors.RECTANGLE;
import static dev.fillplane.surface.TestFloors.room;
import static dev.fillplane.surface.TestFloors.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.surface.Spots;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

class TargetFinderTest {

  private static final Place TARGET = Place.root().at("target");
  private static final double EXACT = 1e-9;

  private final Findings findings = new Findings();

  private static HighPoints highs(DoubleBinaryOperator floor, double... readings) {
    int n = readings.length / 3;
    double[][] columns = new double[3][n];
    List<String> names = new java.util.ArrayList<>();
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < 3; k++) {
        columns[k][i] = readings[3 * i + k];
      }
      names.add("p" + i);
    }
    Spots spots = new Spots(columns[0], columns[1], columns[2], new double[n]);
    return HighPoints.of(sample(floor, 0.1, room("r", RECTANGLE)), spots, names);
  }

  private FoundTarget find(TargetWish wish, HighPoints highs, Double covering) {
    OptionalDouble thickness =
        covering == null ? OptionalDouble.empty() : OptionalDouble.of(covering);
    return TargetFinder.find(wish, 0.003, highs, thickness, TARGET, findings);
  }

  private static TargetWish level(Ceiling... ceilings) {
    return wish(TargetShape.LEVEL, OptionalDouble.empty(), null, ceilings);
  }

  private static TargetWish given(double elevation, double slopeX, Ceiling... ceilings) {
    return wish(TargetShape.GIVEN, OptionalDouble.of(elevation), slopeX, ceilings);
  }

  private static TargetWish wish(
      TargetShape shape, OptionalDouble elevation, Double slopeX, Ceiling... ceilings) {
    OptionalDouble none = OptionalDouble.empty();
    return new TargetWish(
        shape,
        elevation,
        slopeX,
        null,
        none,
        null,
        null,
        null,
        Optional.empty(),
        null,
        List.of(ceilings));
  }

  private static RoomsTarget first(FoundTarget found) {
    return found.groups().get(0);
  }

  private static double amount(Finding finding, String name) {
    return ((Amount) finding.values().get(name)).si();
  }

  private static double eastUp(double x, double y) {
    return 0.001 * x;
  }

  @Test
  void levelLiesOverTheHighestFloor() {
    FoundTarget found = find(level(), highs(TargetFinderTest::eastUp), null);
    assertEquals(TargetShape.LEVEL, found.shape());
    assertEquals(0.009, found.plane().elevation(), EXACT);
    assertEquals(0, found.plane().slope());
    assertEquals(BoundKind.MINIMUM_DEPTH, found.boundBy().get(0).kind());
    assertEquals(6, found.boundBy().get(0).x(), EXACT);
    assertEquals(Optional.empty(), found.boundBy().get(0).point());
  }

  @Test
  void readingAboveTheFloorBindsByName() {
    HighPoints highs = highs(TargetFinderTest::eastUp, 1, 1, 0.004, 2, 3, 0.0075, 9, 9, 0.05);
    FoundTarget found = find(level(), highs, null);
    assertEquals(0.0105, found.plane().elevation(), EXACT);
    Bound only = new Bound(BoundKind.MINIMUM_DEPTH, Optional.of("p1"), 2, 3);
    assertEquals(List.of(only), found.boundBy());
  }

  @Test
  void ceilingThatTheMinimumDepthPassesIsAnError() {
    Ceiling high = new Ceiling(0, 0, 0.02, HeightOf.POUR);
    Ceiling low = new Ceiling(5, 1, 0.008, HeightOf.POUR);
    find(level(high, low), highs(TargetFinderTest::eastUp, 2, 3, 0.0075), null);
    assertEquals(1, findings.errors().size());
    Finding error = findings.errors().get(0);
    assertEquals("ceiling-below-minimum", error.code());
    assertEquals("#/target/ceiling/1", error.place().toString());
    assertEquals(0.0025, amount(error, "by"), EXACT);
    assertEquals("reading p0", error.values().get("spot"));
    assertEquals(3, amount(error, "y"), EXACT);
  }

  @Test
  void ceilingOfTheFinishLeavesRoomForTheCovering() {
    Ceiling finish = new Ceiling(5, 1, 0.024, null);
    find(level(finish), highs(TargetFinderTest::eastUp), 0.0155);
    assertEquals(0.0005, amount(findings.errors().get(0), "by"), EXACT);
  }

  @Test
  void ceilingThatJustFitsBinds() {
    Ceiling finish = new Ceiling(5, 1, 0.024, null);
    FoundTarget found = find(level(finish), highs(TargetFinderTest::eastUp), 0.015);
    assertTrue(findings.errors().isEmpty());
    assertTrue(found.boundBy().contains(new Bound(BoundKind.CEILING, Optional.empty(), 5, 1)));
  }

  @Test
  void ceilingOfTheFinishWithoutThicknessIsAnError() {
    find(level(new Ceiling(5, 1, 0.024, null)), highs(TargetFinderTest::eastUp), null);
    assertEquals("covering-thickness-needed", findings.errors().get(0).code());
    assertEquals("#/target/ceiling/0", findings.errors().get(0).place().toString());
  }

  @Test
  void givenIsTakenAsStated() {
    FoundTarget found = find(given(0.02, 0.001), highs(TargetFinderTest::eastUp), null);
    assertEquals(TargetShape.GIVEN, found.shape());
    assertEquals(new RoomsTarget(List.of(0), new Plane(0.02, 0.001, 0), List.of()), first(found));
    assertTrue(findings.errors().isEmpty() && findings.warnings().isEmpty());
  }

  @Test
  void levelWithAnElevationIsGiven() {
    TargetWish wish = wish(TargetShape.LEVEL, OptionalDouble.of(0.02), null);
    FoundTarget found = find(wish, highs(TargetFinderTest::eastUp), null);
    assertEquals(TargetShape.GIVEN, found.shape());
    assertEquals(new RoomsTarget(List.of(0), Plane.level(0.02), List.of()), first(found));
  }

  /** Level at 4 mm under a floor from 0 to 6 mm over 6 m: 2 m stand above, 5 m lack the minimum. */
  @Test
  void givenBelowTheFloorIsAWarning() {
    find(given(0.004, 0), highs(TargetFinderTest::eastUp), null);
    Finding below = findings.warnings().get(0);
    assertEquals("target-below-floor", below.code());
    assertEquals("#/target/elevation", below.place().toString());
    assertEquals(8, amount(below, "area"), EXACT);
    assertEquals(0.002, amount(below, "height"), EXACT);
    Finding thin = findings.warnings().get(1);
    assertEquals("below-minimum-depth", thin.code());
    assertEquals(20, amount(thin, "area"), EXACT);
    assertEquals(0.005, amount(thin, "missing"), EXACT);
  }

  @Test
  void givenThinnerThanTheMinimumIsAWarningOfItsOwn() {
    find(given(0.007, 0), highs(TargetFinderTest::eastUp), null);
    assertEquals(1, findings.warnings().size());
    assertEquals("below-minimum-depth", findings.warnings().get(0).code());
    assertEquals(8, amount(findings.warnings().get(0), "area"), EXACT);
  }

  @Test
  void givenThroughACeilingIsAnError() {
    Ceiling ceiling = new Ceiling(2, 1, 0.015, HeightOf.POUR);
    find(given(0.02, 0, ceiling), highs(TargetFinderTest::eastUp), null);
    assertEquals("target-above-ceiling", findings.errors().get(0).code());
    assertEquals(0.005, amount(findings.errors().get(0), "by"), EXACT);
  }

  @Test
  void givenWithoutElevationIsAnError() {
    TargetWish wish = wish(TargetShape.GIVEN, OptionalDouble.empty(), null);
    find(wish, highs(TargetFinderTest::eastUp), null);
    assertEquals("elevation-needed", findings.errors().get(0).code());
  }

  /** 2 mm/m is allowed, up to 5 odd, above refused: common practice, no source. */
  @Test
  void steepSlopesWarnThenFail() {
    HighPoints highs = highs(TargetFinderTest::eastUp);
    find(given(0.1, 0.002), highs, null);
    assertTrue(findings.warnings().isEmpty());
    find(given(0.1, 0.0021), highs, null);
    assertEquals("slope-steep", findings.warnings().get(0).code());
    assertEquals("#/target/slopeX", findings.warnings().get(0).place().toString());
    find(given(0.1, -0.005), highs, null);
    assertEquals(2, findings.warnings().size());
    find(given(0.1, -0.0051), highs, null);
    assertEquals("slope-too-steep", findings.errors().get(0).code());
  }
}
