package dev.fillplane.target;

import static dev.fillplane.surface.TestFloors.L_ROOM;
import static dev.fillplane.surface.TestFloors.crooked;
import static dev.fillplane.surface.TestFloors.moved;
import static dev.fillplane.surface.TestFloors.room;
import static dev.fillplane.surface.TestFloors.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.room.Position;
import dev.fillplane.surface.Spots;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

class LeastFillPlaneTest {

  private static final double MINIMUM = 0.003;

  private final Findings findings = new Findings();

  private FoundTarget find(HighPoints highs, double maximumSlope, Ceiling... ceilings) {
    TargetWish wish =
        new TargetWish(
            TargetShape.PLANE,
            OptionalDouble.empty(),
            null,
            null,
            OptionalDouble.empty(),
            maximumSlope,
            null,
            null,
            Optional.empty(),
            null,
            List.of(ceilings));
    Place place = Place.root().at("target");
    return TargetFinder.find(wish, MINIMUM, highs, OptionalDouble.empty(), place, findings);
  }

  private static HighPoints highs(DoubleBinaryOperator floor, double cell, double[] ring) {
    Spots none = new Spots(new double[0], new double[0], new double[0], new double[0]);
    return HighPoints.of(sample(floor, cell, room("r", ring)), none, List.of());
  }

  /** A floor of small humps, different each time. */
  private static DoubleBinaryOperator humps(Random random) {
    double[] p = random.doubles(8).toArray();
    return (x, y) ->
        0.004 * p[0] * Math.sin(2 * p[1] * x + p[2])
            + 0.004 * p[3] * Math.cos(2 * p[4] * y + p[5])
            + 0.003 * (p[6] - 0.5) * x
            + 0.003 * (p[7] - 0.5) * y;
  }

  private static double centroidElevation(Plane plane, HighPoints highs) {
    Position centroid = highs.floor().centroid();
    return plane.at(centroid.x(), centroid.y());
  }

  @Test
  void overAPlaneFloorItIsThatFloorRaised() {
    HighPoints highs = highs((x, y) -> 0.01 + 0.0012 * x - 0.0007 * y, 0.1, L_ROOM);
    Plane plane = find(highs, 0.002).plane();
    assertEquals(0.013, plane.elevation(), 1e-9);
    assertEquals(0.0012, plane.slopeX(), 1e-9);
    assertEquals(-0.0007, plane.slopeY(), 1e-9);
  }

  @Test
  void slopeStopsAtItsLimitInTheDirectionOfTheFloor() {
    HighPoints highs = highs((x, y) -> 0.003 * x + 0.004 * y, 0.1, L_ROOM);
    FoundTarget found = find(highs, 0.002);
    assertEquals(0.002, found.plane().slope(), 1e-9);
    assertTrue(found.boundBy().stream().anyMatch(b -> b.kind() == BoundKind.SLOPE));
    assertTrue(findings.warnings().isEmpty());
  }

  @Test
  void ofEquallyGoodPlanesTheLeastSteepIsTaken() {
    HighPoints highs =
        highs(
            (x, y) -> -0.01 * Math.hypot(x - 3, y - 2), 0.1, new double[] {0, 0, 6, 0, 6, 4, 0, 4});
    Plane plane = find(highs, 0.002).plane();
    assertEquals(MINIMUM, plane.elevation(), 1e-8);
    assertEquals(0, plane.slope(), 1e-8);
  }

  /** Slow reference: a raster over all slopes, each with the lowest plane that covers the floor. */
  @Test
  void bruteForceFindsNoBetterPlane() {
    Random random = new Random(21);
    for (int i = 0; i < 10; i++) {
      HighPoints highs = highs(humps(random), 0.5, crooked(random));
      Plane plane = find(highs, 0.002).plane();
      double found = centroidElevation(plane, highs);
      double best = Double.POSITIVE_INFINITY;
      for (double slopeX = -0.002; slopeX <= 0.002; slopeX += 2e-5) {
        for (double slopeY = -0.002; slopeY <= 0.002; slopeY += 2e-5) {
          if (Math.hypot(slopeX, slopeY) <= 0.002) {
            best = Math.min(best, lowest(slopeX, slopeY, highs));
          }
        }
      }
      assertCovers(plane, highs);
      assertTrue(plane.slope() <= 0.002 * (1 + 1e-6));
      assertTrue(found <= best + 1e-9, found + " over " + best);
      assertTrue(found >= best - 1e-4, found + " far below " + best);
    }
  }

  private static double lowest(double slopeX, double slopeY, HighPoints highs) {
    Plane slope = new Plane(0, slopeX, slopeY);
    int i = highs.highestOver(slope);
    double lift = highs.elevation(i) + MINIMUM - slope.at(highs.x(i), highs.y(i));
    return centroidElevation(new Plane(lift, slopeX, slopeY), highs);
  }

  private static void assertCovers(Plane plane, HighPoints highs) {
    for (int i = 0; i < highs.count(); i++) {
      assertTrue(plane.at(highs.x(i), highs.y(i)) >= highs.elevation(i) + MINIMUM - 1e-12);
    }
  }

  /**
   * Reference: one linear program over all points, the disc of slopes as a polygon of 360 sides.
   */
  @Test
  void agreesWithTheWholeLinearProgram() {
    Random random = new Random(22);
    for (int i = 0; i < 5; i++) {
      HighPoints highs = highs(humps(random), 1.5, crooked(random));
      double found = centroidElevation(find(highs, 0.002).plane(), highs);
      // The polygon holds the disc and passes it by 4e-5 of 2 mm/m over less than 10 m.
      assertEquals(wholeProgram(highs, 0.002), found, 1e-6);
    }
  }

  private static double wholeProgram(HighPoints highs, double steepest) {
    Position c = highs.floor().centroid();
    List<LinearConstraint> all = new ArrayList<>();
    for (int i = 0; i < highs.count(); i++) {
      double[] row = {1, highs.x(i) - c.x(), highs.y(i) - c.y()};
      all.add(new LinearConstraint(row, Relationship.GEQ, 1e3 * (highs.elevation(i) + MINIMUM)));
    }
    for (int k = 0; k < 360; k++) {
      double[] row = {0, Math.cos(Math.toRadians(k)), Math.sin(Math.toRadians(k))};
      all.add(new LinearConstraint(row, Relationship.LEQ, 1e3 * steepest));
    }
    return new SimplexSolver(1e-10)
            .optimize(
                new MaxIter(100_000),
                new LinearObjectiveFunction(new double[] {1, 0, 0}, 0),
                new LinearConstraintSet(all),
                GoalType.MINIMIZE,
                new NonNegativeConstraint(false))
            .getValue()
        / 1e3;
  }

  /** Stated tolerance: 1e-7 of the slope, 1e-9 m of the elevation. */
  @Test
  void turnsWithThePlan() {
    Random random = new Random(23);
    double[] ring = crooked(random);
    DoubleBinaryOperator floor = (x, y) -> 0.0025 * x + 0.001 * y;
    for (double angle : new double[] {0.3, 1.1, 2, 3.3}) {
      double cos = Math.cos(angle);
      double sin = Math.sin(angle);
      Plane straight = find(highs(floor, 0.1, ring), 0.002).plane();
      DoubleBinaryOperator turned =
          (x, y) -> floor.applyAsDouble(cos * x + sin * y, cos * y - sin * x);
      Plane plane = find(highs(turned, 0.1, moved(ring, angle, 0, 0)), 0.002).plane();
      assertEquals(straight.elevation(), plane.elevation(), 1e-9);
      assertEquals(cos * straight.slopeX() - sin * straight.slopeY(), plane.slopeX(), 1e-9);
      assertEquals(sin * straight.slopeX() + cos * straight.slopeY(), plane.slopeY(), 1e-9);
    }
  }

  @Test
  void farFromTheOriginItIsTheSame() {
    Random random = new Random(24);
    double[] ring = crooked(random);
    DoubleBinaryOperator floor = humps(random);
    double shift = 1 << 20;
    HighPoints near = highs(floor, 0.2, ring);
    HighPoints far =
        highs(
            (x, y) -> 100 + floor.applyAsDouble(x - shift, y - shift),
            0.2,
            moved(ring, 0, shift, shift));
    Plane one = find(near, 0.002).plane();
    Plane other = find(far, 0.002).plane();
    assertEquals(one.slopeX(), other.slopeX(), 1e-9);
    assertEquals(one.slopeY(), other.slopeY(), 1e-9);
    assertEquals(100 + centroidElevation(one, near), centroidElevation(other, far), 1e-9);
  }

  @Test
  void ceilingPressesThePlaneDownAtItsPlace() {
    HighPoints highs = highs((x, y) -> 0, 0.1, new double[] {0, 0, 6, 0, 6, 4, 0, 4});
    FoundTarget free = find(highs, 0.002, new Ceiling(6, 2, 0.0031, HeightOf.POUR));
    assertEquals(0, free.plane().slope(), 1e-9);
    HighPoints hump =
        highs((x, y) -> x < 0.05 ? 0.004 : 0, 0.1, new double[] {0, 0, 6, 0, 6, 4, 0, 4});
    FoundTarget pressed = find(hump, 0.002, new Ceiling(6, 2, 0.0036, HeightOf.POUR));
    assertTrue(findings.errors().isEmpty());
    assertTrue(pressed.plane().at(6, 2) <= 0.0036 + 1e-9);
    assertCovers(pressed.plane(), hump);
  }

  /** A ceiling that is passed by less than can be told does not count as passed. */
  @Test
  void ceilingThatJustFitsBinds() {
    HighPoints highs = highs((x, y) -> 0.001 * x, 0.1, new double[] {0, 0, 6, 0, 6, 4, 0, 4});
    Ceiling ceiling = new Ceiling(6, 2, 0.009 - 5e-7, HeightOf.POUR);
    FoundTarget found = find(highs, 0.002, ceiling);
    assertTrue(findings.errors().isEmpty());
    assertTrue(found.boundBy().stream().anyMatch(b -> b.kind() == BoundKind.CEILING));
    assertCovers(found.plane(), highs);
  }

  @Test
  void ceilingThatNoPlaneCanKeepIsAnError() {
    HighPoints highs = highs((x, y) -> 0.001 * x, 0.1, new double[] {0, 0, 6, 0, 6, 4, 0, 4});
    FoundTarget found = find(highs, 0.002, new Ceiling(6, 2, 0.007, HeightOf.POUR));
    Finding error = findings.errors().get(0);
    assertEquals("ceiling-below-minimum", error.code());
    assertEquals("#/target/ceiling/0", error.place().toString());
    assertEquals(0.002, ((Amount) error.values().get("by")).si(), 1e-8);
    assertEquals(6, ((Amount) error.values().get("x")).si(), 1e-6);
    assertCovers(found.plane(), highs);
  }

  @Test
  void steepWishesWarnThenFail() {
    HighPoints highs = highs((x, y) -> 0.02 * x, 0.2, L_ROOM);
    find(highs, 0.004);
    assertEquals("slope-steep", findings.warnings().get(0).code());
    assertEquals("#/target/maximumSlope", findings.warnings().get(0).place().toString());
    find(highs, 0.008);
    assertEquals("slope-too-steep", findings.errors().get(0).code());
  }

  @Test
  void withoutSlopeItIsTheLevel() {
    HighPoints highs = highs((x, y) -> 0.001 * x, 0.1, L_ROOM);
    Plane plane = find(highs, 0).plane();
    assertEquals(0.009, plane.elevation(), 1e-9);
    assertEquals(0, plane.slope(), 1e-12);
  }
}
