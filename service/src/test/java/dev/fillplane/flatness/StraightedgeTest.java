package dev.fillplane.flatness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class StraightedgeTest {

  private static final String HALL = "POLYGON((0 0, 6 0, 6 4, 0 4, 0 0))";
  private static final String ANGLE =
      "POLYGON((0 0, 6 0, 6 2.1, 3.3 2.1, 3.3 4.6, 0 4.6, 0 0), (1 1, 1.4 1, 1.4 1.6, 1 1.6, 1 1))";

  /** A bowl z = k r^2 is k L^2 / 4 deep under every edge of length L. */
  @Test
  void bowl() {
    Gap gap = gap(room(HALL), (x, y) -> 0.004 * (x * x + y * y), 2);
    assertEquals(0.004, gap.gap(), 1e-12);
    assertEquals(2, gap.from().distance(gap.to()), 1e-9);
    assertEquals(1, gap.from().distance(gap.at()), 1e-9);
  }

  @Test
  void edgeThatIsNoWholeNumberOfSteps() {
    Gap gap = gap(room(HALL), (x, y) -> 0.004 * (x * x + y * y), 3.048);
    assertEquals(0.004 * 3.048 * 3.048 / 4, gap.gap(), 1e-12);
  }

  @Test
  void planeAndCrownHaveNoGap() {
    assertEquals(
        Optional.empty(),
        Straightedge.largestGap(room(HALL), (x, y) -> 0.3 + 0.002 * x - 0.003 * y, 2));
    assertEquals(Optional.empty(), Straightedge.largestGap(room(HALL), (x, y) -> -0.01 * x * x, 2));
  }

  @Test
  void gutterIsFoundAcrossIt() {
    Gap gap = gap(room(HALL), (x, y) -> Math.abs(x - 3) < 0.45 ? -0.006 : 0, 2);
    assertEquals(0.006, gap.gap(), 1e-12);
    assertTrue(gap.from().x() < 2.56 && gap.to().x() > 3.44 && Math.abs(gap.at().x() - 3) < 0.45);
  }

  /** Two rooms 20 mm apart in height, and an island whose top is far below: no edge joins them. */
  @Test
  void neverAcrossWallsOrHoles() {
    List<Polygon> both = List.of(room(HALL).get(0), room("POLYGON((6 0,9 0,9 4,6 4,6 0))").get(0));
    assertTrue(Straightedge.largestGap(both, (x, y) -> x > 6 ? 0.02 : 0, 2).isEmpty());
    Polygon ring = room("POLYGON((0 0,3 0,3 3,0 3,0 0),(1 1,2 1,2 2,1 2,1 1))").get(0);
    DoubleBinaryOperator pit =
        (x, y) -> Math.max(Math.abs(x - 1.5), Math.abs(y - 1.5)) > 0.5 ? 0 : -1;
    assertTrue(Straightedge.largestGap(List.of(ring), pit, 2).isEmpty());
  }

  @Test
  void everyEdgeStaysInsideItsRoom() {
    Polygon room = room(ANGLE).get(0);
    for (int seed = 0; seed < 30; seed++) {
      Gap gap = gap(List.of(room), waves(seed), 2);
      LineSegment edge =
          new LineSegment(gap.from().x(), gap.from().y(), gap.to().x(), gap.to().y());
      assertTrue(room.covers(edge.toGeometry(room.getFactory())), gap.toString());
    }
  }

  /**
   * A passage shorter than the edge is checked with the length that fits, 2 mm of clearance off.
   */
  @Test
  void shortRoomUsesItsOwnLength() {
    Gap gap = gap(room("POLYGON((0 0,1.2 0,1.2 0.3,0 0.3,0 0))"), (x, y) -> 0.01 * x * x, 3);
    assertEquals(0.01 * 1.198 * 1.198 / 4, gap.gap(), 1e-9);
  }

  @Test
  void nothingFitsInANiche() {
    List<Polygon> niche = room("POLYGON((0 0,0.3 0,0.3 0.3,0 0.3,0 0))");
    assertTrue(Straightedge.largestGap(niche, (x, y) -> x * x, 2).isEmpty());
    assertTrue(Straightedge.largestGap(List.of(), (x, y) -> x * x, 2).isEmpty());
  }

  @Test
  void turningThePlanChangesNothing() throws Exception {
    for (int seed = 0; seed < 20; seed++) {
      Random random = new Random(seed);
      AffineTransformation turn =
          AffineTransformation.rotationInstance(random.nextDouble() * 7)
              .compose(AffineTransformation.translationInstance(random.nextInt(900), -40));
      AffineTransformation back = turn.getInverse();
      DoubleBinaryOperator floor = waves(seed);
      DoubleBinaryOperator turned =
          (x, y) -> {
            Coordinate place = back.transform(new Coordinate(x, y), new Coordinate());
            return floor.applyAsDouble(place.x, place.y);
          };
      List<Polygon> rooms = List.of((Polygon) turn.transform(room(ANGLE).get(0)));
      assertEquals(gap(room(ANGLE), floor, 2).gap(), gap(rooms, turned, 2).gap(), 1e-6);
    }
  }

  /** No edge in any direction at any place shows more; a coarse search of its own comes near. */
  @Test
  void freeSearchFindsNoMuchLargerGap() {
    for (int seed = 0; seed < 5; seed++) {
      DoubleBinaryOperator floor = waves(seed);
      double searched = gap(room(HALL), floor, 2).gap();
      double free = freeSearch(floor, new Random(seed));
      assertTrue(free < searched * 1.1, free + " against " + searched);
      assertTrue(free > searched * 0.8, free + " against " + searched);
    }
  }

  @Test
  void refusesAnEdgeThatIsNone() {
    for (double length : new double[] {0.2, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(
          IllegalArgumentException.class,
          () -> Straightedge.largestGap(room(HALL), (x, y) -> 0, length));
    }
  }

  private static double freeSearch(DoubleBinaryOperator floor, Random random) {
    double largest = 0;
    for (int i = 0; i < 20_000; i++) {
      double angle = random.nextDouble() * Math.PI;
      double x = random.nextDouble() * 6;
      double y = random.nextDouble() * 4;
      double[] heights = new double[21];
      boolean inside = true;
      for (int j = 0; j < heights.length; j++) {
        double px = x + 0.1 * j * Math.cos(angle);
        double py = y + 0.1 * j * Math.sin(angle);
        inside &= px >= 0 && px <= 6 && py >= 0 && py <= 4;
        heights[j] = floor.applyAsDouble(px, py);
      }
      largest = inside ? Math.max(largest, Straightedge.gap(heights, 0.1, 2).gap()) : largest;
    }
    return largest;
  }

  private static DoubleBinaryOperator waves(int seed) {
    Random random = new Random(seed);
    double a = 1 + random.nextDouble();
    double b = 1 + random.nextDouble();
    double c = random.nextDouble() * 6;
    return (x, y) -> 0.003 * Math.sin(a * x + c) * Math.cos(b * y) + 0.002 * Math.sin(x + 2 * y);
  }

  private static Gap gap(List<Polygon> rooms, DoubleBinaryOperator floor, double length) {
    return Straightedge.largestGap(rooms, floor, length).orElseThrow();
  }

  private static List<Polygon> room(String wkt) {
    try {
      return List.of((Polygon) new WKTReader().read(wkt));
    } catch (ParseException e) {
      throw new IllegalArgumentException(wkt, e);
    }
  }
}
