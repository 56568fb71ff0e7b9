package dev.fillplane.target;

import static dev.fillplane.surface.TestFloors.L_ROOM;
import static dev.fillplane.surface.TestFloors.RECTANGLE;
import static dev.fillplane.surface.TestFloors.crooked;
import static dev.fillplane.surface.TestFloors.moved;
import static dev.fillplane.target.GroundFloor.STEEPEST;
import static dev.fillplane.target.GroundFloor.humps;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.surface.FloorCells;
import java.util.ArrayList;
import java.util.List;
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

class CheapestPlaneTest {

  /** Part of the whole price that the answer may be above the optimum. */
  private static final double GAP = 1.01 * CheapestPlane.GAP;

  /** Slow reference: no plane of a raster about the answer, and none far off, is cheaper. */
  @Test
  void bruteForceFindsNoCheaperPlane() {
    Random random = new Random(41);
    for (int i = 0; i < 8; i++) {
      GroundFloor floor =
          GroundFloor.of(humps(random), 0.4, crooked(random)).deepest(0.002 + 0.001 * i);
      Plane found = floor.plane();
      double price = floor.wholePrice(found);
      assertTrue(found.slope() <= STEEPEST * (1 + 1e-6));
      assertTrue(floor.deepestCut(found) <= floor.grindDepth() + 1e-9);
      for (double width : new double[] {2e-3, 2e-5}) {
        for (Plane other : raster(floor, found, width)) {
          assertTrue(floor.wholePrice(other) >= price * (1 - GAP), other + " beats " + found);
        }
      }
    }
  }

  /** Planes that keep all limits, off by up to a width in slope and height. */
  private static List<Plane> raster(GroundFloor floor, Plane about, double width) {
    List<Plane> planes = new ArrayList<>();
    double x = floor.highs().centroid().x();
    double y = floor.highs().centroid().y();
    for (int i = 0; i < 11 * 11 * 11; i++) {
      double slopeX = about.slopeX() + width * (i % 11 - 5) / 5;
      double slopeY = about.slopeY() + width * (i / 11 % 11 - 5) / 5;
      double height = floor.centroidElevation(about) + width * (i / 121 - 5) / 5;
      Plane plane = new Plane(height - slopeX * x - slopeY * y, slopeX, slopeY);
      if (plane.slope() <= STEEPEST && floor.deepestCut(plane) <= floor.grindDepth()) {
        planes.add(plane);
      }
    }
    return planes;
  }

  /**
   * Reference: one linear program with the mean floor of each cell as a point. The price of a cell
   * that the plane cuts is a mean of what is bent upwards, hence no less than that of its mean
   * floor; so the program's least price is no more than ours, and its plane costs no less.
   */
  @Test
  void agreesWithTheLinearProgramOverCells() {
    Random random = new Random(42);
    for (int i = 0; i < 5; i++) {
      GroundFloor floor = GroundFloor.of(humps(random), 0.5, crooked(random)).at(1, 1.5 + 0.5 * i);
      double price = floor.price(floor.plane());
      double[] program = wholeProgram(floor);
      Plane other = new Plane(program[0], program[1], program[2]);
      assertTrue(program[3] <= price + 1e-9, program[3] + " over " + price);
      assertEquals(program[3], price, 0.05 * price);
      assertTrue(floor.wholePrice(other) >= floor.wholePrice(floor.plane()) * (1 - GAP));
    }
  }

  /**
   * Above 4 mm stands a quarter of the floor, above 2 mm three eighths; grinding at twice the price
   * of filling takes the third that is highest, which ends on the middle step.
   */
  @Test
  void levelRestsOnAStepOfTheFloor() {
    DoubleBinaryOperator steps = (x, y) -> x < 1.49 ? 0.004 : x > 4.51 && y > 2.01 ? 0.002 : 0;
    GroundFloor floor = GroundFloor.of(steps, 0.1, RECTANGLE);
    assertEquals(0.005, floor.level().elevation(), 1e-9);
    assertEquals(0.007, floor.deepest(0).level().elevation(), 1e-9);
  }

  private static double[] wholeProgram(GroundFloor floor) {
    FloorCells cells = floor.floor().cells(0);
    int n = cells.count();
    List<LinearConstraint> rows = new ArrayList<>();
    double[] sum = new double[3 + n];
    for (int i = 0; i < n; i++) {
      sum[3 + i] = cells.area()[i];
      double height = 1e3 * (cells.elevation()[i] + floor.minimumDepth());
      rows.add(pinball(i, n, cells, floor.rates().fill(), height));
      rows.add(pinball(i, n, cells, -floor.rates().grind(), height));
    }
    for (int k = 0; k < 360; k++) {
      double[] row = new double[3 + n];
      row[1] = Math.cos(Math.toRadians(k));
      row[2] = Math.sin(Math.toRadians(k));
      rows.add(new LinearConstraint(row, Relationship.LEQ, 1e3 * STEEPEST));
    }
    var found =
        new SimplexSolver(1e-10)
            .optimize(
                new MaxIter(100_000),
                new LinearObjectiveFunction(sum, 0),
                new LinearConstraintSet(rows),
                GoalType.MINIMIZE,
                new NonNegativeConstraint(false));
    double[] p = found.getPoint();
    return new double[] {p[0] / 1e3, p[1] / 1e3, p[2] / 1e3, found.getValue() / 1e3};
  }

  /** {@code cost >= rate * (plane - height)}. */
  private static LinearConstraint pinball(
      int i, int n, FloorCells cells, double rate, double height) {
    double[] row = new double[3 + n];
    row[0] = -rate;
    row[1] = -rate * cells.x()[i];
    row[2] = -rate * cells.y()[i];
    row[3 + i] = 1;
    return new LinearConstraint(row, Relationship.GEQ, -rate * height);
  }

  /** Level over a floor that tilts by 1 mm/m along 6 m: the third that is ground starts at 4 m. */
  @Test
  void levelIsTheQuantileOfTheFloorByArea() {
    GroundFloor floor = GroundFloor.of((x, y) -> 0.001 * x, 0.1, RECTANGLE);
    assertEquals(0.004 + 0.003, floor.level().elevation(), 1e-9);
    assertEquals(0.0054 + 0.003, floor.at(1, 9).level().elevation(), 1e-9);
    assertEquals(8, floor.groundArea(floor.level()), 1e-6);
  }

  @Test
  void grindingDepthHoldsTheLevelUp() {
    GroundFloor floor = GroundFloor.of((x, y) -> 0.001 * x, 0.1, RECTANGLE).deepest(0.001);
    Plane level = floor.level();
    assertEquals(0.006 - 0.001 + 0.003, level.elevation(), 1e-9);
    Bound bound = Bounds.of(level, floor.limits(0)).get(0);
    assertEquals(BoundKind.GRIND_DEPTH, bound.kind());
    assertEquals(6, bound.x(), 1e-9);
  }

  @Test
  void overAPlaneFloorNothingIsGround() {
    GroundFloor floor = GroundFloor.of((x, y) -> 0.01 + 0.0012 * x - 0.0007 * y, 0.1, L_ROOM);
    Plane plane = floor.plane();
    assertEquals(0.013, plane.elevation(), 1e-7);
    assertEquals(0.0012, plane.slopeX(), 5e-7);
    assertEquals(-0.0007, plane.slopeY(), 5e-7);
  }

  /** A floor twice as steep as allowed, straight along x: 2 mm/m are left, a third is ground. */
  @Test
  void slopeLimitHoldsInClosedForm() {
    GroundFloor floor = GroundFloor.of((x, y) -> 0.004 * x, 0.1, RECTANGLE);
    Plane plane = floor.plane();
    assertEquals(0.002, plane.slopeX(), 1e-8);
    assertEquals(0, plane.slopeY(), 5e-7);
    assertEquals(4 * 0.002 + 0.003, plane.elevation(), 1e-6);
    assertTrue(
        Bounds.of(plane, floor.limits(STEEPEST)).stream()
            .anyMatch(bound -> bound.kind() == BoundKind.SLOPE));
  }

  @Test
  void turnsAndMovesWithThePlan() {
    Random random = new Random(43);
    for (int i = 0; i < 6; i++) {
      double[] ring = crooked(random);
      // Straight along one direction, so that the cells' corners see the same floor.
      double steep = 0.0005 + 0.001 * i;
      DoubleBinaryOperator floor = (x, y) -> steep * x + 0.001 * y;
      double angle = 0.3 + i;
      double cos = Math.cos(angle);
      double sin = Math.sin(angle);
      DoubleBinaryOperator turned =
          (x, y) -> floor.applyAsDouble(cos * (x - 50) + sin * y, cos * y - sin * (x - 50));
      Plane straight = GroundFloor.of(floor, 0.1, ring).plane();
      Plane plane = GroundFloor.of(turned, 0.1, moved(ring, angle, 50, 0)).plane();
      assertEquals(cos * straight.slopeX() - sin * straight.slopeY(), plane.slopeX(), 5e-7);
      assertEquals(sin * straight.slopeX() + cos * straight.slopeY(), plane.slopeY(), 5e-7);
      assertEquals(straight.elevation(), plane.at(50, 0), 1e-6);
    }
  }

  @Test
  void dearerGrindingNeverGrindsMore() {
    Random random = new Random(44);
    for (int i = 0; i < 10; i++) {
      GroundFloor floor = GroundFloor.of(humps(random), 0.3, crooked(random));
      double before = Double.POSITIVE_INFINITY;
      double levelBefore = Double.POSITIVE_INFINITY;
      for (double grind = 0.25; grind < 20; grind *= 2) {
        GroundFloor dearer = floor.at(1, grind);
        double ground = dearer.groundVolume(dearer.plane());
        double level = dearer.groundVolume(dearer.level());
        assertTrue(ground <= before * (1 + 1e-4), ground + " after " + before);
        assertTrue(level <= levelBefore + 1e-12);
        before = ground;
        levelBefore = level;
      }
    }
  }

  @Test
  void onlyTheRatioOfThePricesCounts() {
    GroundFloor floor = GroundFloor.of(humps(new Random(45)), 0.2, L_ROOM);
    Plane one = floor.at(1.9, 4).plane();
    Plane other = floor.at(1900, 4000).plane();
    assertEquals(one.elevation(), other.elevation(), 1e-12);
    assertEquals(one.slopeX(), other.slopeX(), 1e-12);
  }

  /** Free filling, free grinding, both. */
  @Test
  void pricesOfNothingAreTaken() {
    GroundFloor floor = GroundFloor.of(humps(new Random(46)), 0.3, L_ROOM).deepest(0.004);
    Plane freeFill = floor.at(0, 1).plane();
    assertEquals(0, floor.groundVolume(freeFill), 1e-7);
    Plane freeGrind = floor.at(1, 0).plane();
    assertEquals(0.004, floor.deepestCut(freeGrind), 1e-6);
    assertEquals(floor.level().elevation(), floor.at(0, 0).level().elevation(), 1e-9);
  }

  /** Less room to grind, less slope, a ceiling, a fixed height: each one is never cheaper. */
  @Test
  void addingALimitNeverCheapens() {
    Random random = new Random(47);
    for (int i = 0; i < 8; i++) {
      GroundFloor floor = GroundFloor.of(humps(random), 0.3, crooked(random));
      Plane free = floor.plane();
      double price = floor.wholePrice(free) * (1 - GAP);
      double at = floor.highs().centroid().x();
      double height = free.at(at, 2);
      Band low = new Band(BoundKind.CEILING, 0, at, 2, Double.NEGATIVE_INFINITY, height - 0.0005);
      Band fixed = new Band(BoundKind.FIXED, 0, at + 1, 2, height + 0.001, height + 0.002);
      Plane pressed = floor.plane(low);
      Plane held = floor.plane(low, fixed);
      assertTrue(low.off(pressed.at(at, 2)) <= Limits.TOUCH);
      assertTrue(fixed.off(held.at(at + 1, 2)) <= Limits.TOUCH);
      assertTrue(floor.wholePrice(pressed) >= price);
      assertTrue(floor.wholePrice(held) >= floor.wholePrice(pressed) * (1 - GAP));
      assertTrue(floor.wholePrice(floor.level()) >= price);
      assertTrue(floor.wholePrice(floor.deepest(0.001).plane()) >= price);
    }
  }

  /** No depth to grind and none allowed are the same. */
  @Test
  void withoutDepthItIsThePlaneOfLeastFill() {
    GroundFloor floor = GroundFloor.of(humps(new Random(48)), 0.2, L_ROOM);
    Plane almost = floor.deepest(1e-9).at(1, 1e6).plane();
    Plane none = floor.deepest(0).plane();
    assertEquals(floor.wholePrice(none), floor.wholePrice(almost), 1e-5);
  }
}
