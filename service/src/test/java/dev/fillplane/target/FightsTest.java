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
import org.junit.jupiter.api.Test;

/** Limits that cannot be kept together, over a floor of 6 x 4 m that rises by 0.5 mm/m. */
class FightsTest {

  private static final double EXACT = 2e-8;

  private final Findings findings = new Findings();

  private FoundTarget find(TargetShape shape, Double grind, List<FixedHeight> fixed, Ceiling... c) {
    double[] none = new double[0];
    HighPoints highs =
        HighPoints.of(
            sample((x, y) -> 0.0005 * x, 0.1, room("r", RECTANGLE)),
            new Spots(none, none, none, none),
            List.of());
    OptionalDouble open = OptionalDouble.empty();
    GrindWish wish = new GrindWish(grind != null, grind, null);
    return TargetFinder.find(
        new TargetWish(
            shape, open, null, null, open, null, null, wish, Optional.empty(), fixed, List.of(c)),
        0.003,
        highs,
        open,
        Place.root().at("target"),
        findings);
  }

  private static FixedHeight fixed(double x, double y, double elevation) {
    return new FixedHeight(x, y, elevation, HeightOf.POUR, 0.001);
  }

  private void assertErrors(double by, String... codesAndPlaces) {
    List<Finding> errors = findings.errors();
    assertEquals(codesAndPlaces.length / 2, errors.size(), errors::toString);
    for (int i = 0; i < errors.size(); i++) {
      assertEquals(codesAndPlaces[2 * i], errors.get(i).code());
      assertEquals("#/target/" + codesAndPlaces[2 * i + 1], errors.get(i).place().toString());
      assertEquals(by, ((Amount) errors.get(i).values().get("by")).si(), EXACT);
    }
  }

  /** 10 mm over 2 m are 5 mm/m; with 2 mm/m and 1 mm of tolerance at both ends 4 mm are left. */
  @Test
  void fixedHeightsTooSteepFightWithTheSlopeLimit() {
    find(TargetShape.PLANE, null, List.of(fixed(2, 2, 0.02), fixed(4, 2, 0.03)));
    assertErrors(
        0.002,
        "limits-fight",
        "fixed/0",
        "limits-fight",
        "fixed/1",
        "limits-fight",
        "maximumSlope");
    assertEquals(
        "the fixed height target/fixed/1 and the slope limit",
        findings.errors().get(0).values().get("others"));
  }

  /** The same level cannot meet 20 and 23 mm with a tolerance of 1 mm. */
  @Test
  void noLevelMeetsTwoHeights() {
    find(TargetShape.LEVEL, null, List.of(fixed(2, 2, 0.02), fixed(4, 2, 0.023)));
    assertErrors(0.0005, "limits-fight", "fixed/0", "limits-fight", "fixed/1");
    assertTrue(
        findings.errors().get(1).values().get("others").toString().contains("the level shape"));
  }

  /**
   * Four heights on a plane but for one that is 5.2 mm off: each misses by 1.3 mm, 1 is tolerated.
   */
  @Test
  void heightsThatNoPlaneMeets() {
    find(
        TargetShape.PLANE,
        null,
        List.of(fixed(1, 1, 0.02), fixed(3, 1, 0.02), fixed(3, 3, 0.02), fixed(1, 3, 0.0185)));
    assertTrue(findings.errors().isEmpty());
    find(
        TargetShape.PLANE,
        null,
        List.of(fixed(1, 1, 0.02), fixed(3, 1, 0.02), fixed(3, 3, 0.02), fixed(1, 3, 0.0148)));
    assertErrors(
        0.0003,
        "limits-fight",
        "fixed/0",
        "limits-fight",
        "fixed/1",
        "limits-fight",
        "fixed/2",
        "limits-fight",
        "fixed/3");
  }

  /** At x = 6 the floor is 3 mm high and wants 3 mm more; 4 mm with 1 mm of tolerance miss it. */
  @Test
  void fixedHeightBelowTheMinimumDepth() {
    find(TargetShape.PLANE, null, List.of(fixed(6, 0, 0.004)));
    assertErrors(0.001, "limits-fight", "fixed/0", "limits-fight", "minimumDepth");
  }

  @Test
  void fixedHeightBelowWhatGrindingReaches() {
    find(TargetShape.PLANE, 0.0004, List.of(fixed(6, 0, 0.004)));
    assertErrors(0.0006, "limits-fight", "fixed/0", "limits-fight", "grind/maximumDepth");
  }

  @Test
  void grindingMakesRoomForAFixedHeight() {
    FoundTarget found = find(TargetShape.PLANE, 0.002, List.of(fixed(6, 0, 0.004)));
    assertTrue(findings.errors().isEmpty());
    assertTrue(found.plane().at(6, 0) <= 0.005 + 1e-6);
    assertTrue(found.boundBy().stream().anyMatch(bound -> bound.kind() == BoundKind.FIXED));
  }

  @Test
  void ceilingBelowWhatGrindingReaches() {
    find(TargetShape.LEVEL, 0.001, List.of(), new Ceiling(2, 2, 0.0045, HeightOf.POUR));
    assertErrors(0.0005, "ceiling-below-ground-floor", "ceiling/0");
  }

  /** Fixed at 20 mm with 1 mm of tolerance under a ceiling of 18 mm in the same place. */
  @Test
  void fixedHeightOverACeiling() {
    Ceiling ceiling = new Ceiling(2, 2, 0.018, HeightOf.POUR);
    find(TargetShape.PLANE, null, List.of(fixed(2, 2, 0.02)), ceiling);
    assertErrors(0.0005, "limits-fight", "fixed/0", "limits-fight", "ceiling/0");
    assertEquals("the ceiling target/ceiling/0", findings.errors().get(0).values().get("others"));
  }

  /** Heights further off, which the nearest plane happens to touch, have no part in the fight. */
  @Test
  void onlyThoseThatFightAreTold() {
    Ceiling ceiling = new Ceiling(2, 2, 0.018, HeightOf.POUR);
    List<FixedHeight> fixed =
        List.of(fixed(5, 2, 0.0225), fixed(2, 2, 0.02), fixed(2, 3.5, 0.0215), fixed(5, 3, 0.0225));
    find(TargetShape.PLANE, null, fixed, ceiling);
    assertErrors(0.0005, "limits-fight", "fixed/1", "limits-fight", "ceiling/0");
  }

  /** Each of two ceilings is told, and the target stays over the floor. */
  @Test
  void eachFightIsTold() {
    FoundTarget found =
        find(
            TargetShape.LEVEL,
            null,
            List.of(),
            new Ceiling(2, 2, 0.005, HeightOf.POUR),
            new Ceiling(3, 2, 0.1, HeightOf.POUR),
            new Ceiling(4, 2, 0.005, HeightOf.POUR));
    assertErrors(0.001, "ceiling-below-minimum", "ceiling/0", "ceiling-below-minimum", "ceiling/2");
    assertEquals(0.006, found.plane().elevation(), 1e-9);
  }

  @Test
  void fixedHeightOfTheFinishNeedsTheCovering() {
    find(TargetShape.LEVEL, null, List.of(new FixedHeight(1, 1, 0.02, null, null)));
    assertEquals("covering-thickness-needed", findings.errors().get(0).code());
    assertEquals("#/target/fixed/0", findings.errors().get(0).place().toString());
  }

  @Test
  void givenTargetIsHeldAgainstFixedHeightsAndGrinding() {
    double[] none = new double[0];
    HighPoints highs =
        HighPoints.of(
            sample((x, y) -> 0.0005 * x, 0.1, room("r", RECTANGLE)),
            new Spots(none, none, none, none),
            List.of());
    OptionalDouble open = OptionalDouble.empty();
    TargetWish wish =
        new TargetWish(
            TargetShape.GIVEN,
            OptionalDouble.of(0.003),
            null,
            null,
            open,
            null,
            null,
            new GrindWish(true, 0.002, null),
            Optional.empty(),
            List.of(fixed(1, 1, 0.0045), fixed(2, 1, 0.0035)),
            null);
    TargetFinder.find(wish, 0.003, highs, open, Place.root().at("target"), findings);
    assertEquals(2, findings.errors().size());
    Finding missed = findings.errors().get(0);
    assertEquals("target-misses-fixed-height", missed.code());
    assertEquals("#/target/fixed/0", missed.place().toString());
    assertEquals(0.0005, ((Amount) missed.values().get("by")).si(), 1e-12);
    Finding deep = findings.errors().get(1);
    assertEquals("grinding-too-deep", deep.code());
    assertEquals(0.003, ((Amount) deep.values().get("deepest")).si(), 1e-9);
  }
}
