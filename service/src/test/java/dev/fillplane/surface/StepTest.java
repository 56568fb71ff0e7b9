package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.Position;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class StepTest {

  /** Northward along x = 5, so that west of it is left. */
  private static final Step EDGE = new Step(new Position(5, 1), new Position(5, 2));

  private static final Polygon SOUTH = rectangle(0, 10, 0, 3);
  private static final Polygon NORTH = rectangle(0, 10, 3.1, 6);

  private final Findings findings = new Findings();

  @Test
  void jumpOfSixMillimetresIsFound() {
    KrigedSurface floor = fit(StepTest::jump, List.of());
    for (double y = 0.5; y < 6; y++) {
      for (double x : new double[] {0.5, 3, 4.9, 5.1, 7, 9.5}) {
        assertEquals(jump(x, y), floor.elevation(x, y), 1e-4, x + " " + y);
      }
    }
  }

  @Test
  void withoutTheStepTheJumpIsWashedOut() {
    KrigedSurface floor =
        KrigedSurface.fit(Floors.scattered(30, 4, StepTest::jump), SurfaceWish.usual());
    assertTrue(floor.elevation(4.99, 3) - floor.elevation(5.01, 3) < 0.001);
  }

  @Test
  void positionOnTheLineIsOnTheLeft() {
    KrigedSurface floor = fit(StepTest::jump, List.of());
    assertEquals(jump(4.999_999, 3.3), floor.elevation(5, 3.3), 1e-4);
    assertEquals(0.006, floor.elevation(5, 3.3) - floor.elevation(5.000_001, 3.3), 1e-4);
  }

  @Test
  void onlyRoomsThatAreCutJump() {
    KrigedSurface floor =
        fit(
            (x, y) -> jump(x, y) - (y < 3.05 || x > 5 ? 0 : 0.006) + (y < 3.05 ? 0 : 0.003),
            List.of(SOUTH, NORTH));
    assertEquals(0, floor.elevation(5, 4.5) - floor.elevation(5.000_001, 4.5), 1e-8);
    assertEquals(0.006, floor.elevation(5, 2.5) - floor.elevation(5.000_001, 2.5), 1e-4);
  }

  @Test
  void stepThatSeparatesNoReadingsIsLeftOut() {
    Step far = new Step(new Position(11, 1), new Position(11, 2));
    SurfaceWish told = told(far, EDGE);
    assertEquals(List.of(EDGE), told.steps());
    assertEquals("step-without-readings", findings.warnings().get(0).code());
    assertEquals(Place.root().at("steps").at(0), findings.warnings().get(0).place());
  }

  @Test
  void theSameStepTwiceIsToldOnce() {
    assertEquals(List.of(EDGE), told(EDGE, new Step(EDGE.to(), EDGE.from())).steps());
    assertEquals(1, findings.warnings().size());
  }

  @Test
  void stepWithoutLengthIsRefused() {
    told(new Step(EDGE.from(), EDGE.from()));
    assertEquals("step-without-length", findings.errors().get(0).code());
  }

  /** Nobody uses them there, and to ask a million readings for them takes long. */
  @Test
  void stepsOfAFloorThatIsNotKrigedAreNotLookedAt() {
    Step far = new Step(new Position(11, 1), new Position(11, 2));
    SurfaceWish triangles =
        new SurfaceWish(Optional.of(Method.TRIANGLES), null, Optional.empty(), null, List.of(far));
    Spots spots = Floors.scattered(30, 4, StepTest::jump);
    StepCheck.told(triangles, spots, List.of(), Place.root(), findings);
    assertEquals(0, findings.size());
  }

  private SurfaceWish told(Step... steps) {
    Spots spots = Floors.scattered(30, 4, StepTest::jump);
    return StepCheck.told(wish(steps), spots, List.of(), Place.root().at("steps"), findings);
  }

  private static KrigedSurface fit(DoubleBinaryOperator floor, List<Polygon> rooms) {
    return KrigedSurface.fit(Floors.scattered(30, 4, floor), wish(EDGE), rooms);
  }

  private static SurfaceWish wish(Step... steps) {
    return SurfaceWish.usual().with(List.of(steps));
  }

  /** A plane that stands 6 mm higher west of x = 5. */
  private static double jump(double x, double y) {
    return 0.001 * x + 0.0005 * y + (x <= 5 ? 0.006 : 0);
  }

  private static Polygon rectangle(double x1, double x2, double y1, double y2) {
    return (Polygon) new GeometryFactory().toGeometry(new Envelope(x1, x2, y1, y2));
  }
}
