package dev.fillplane.flatness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

class GrindAndPatchTest {

  private static final FlatnessLimit FOUR = new FlatnessLimit(2, 0.004, "test");

  @Test
  void planeNeedsNothing() {
    DoubleBinaryOperator plane = (x, y) -> 2 + 0.01 * x - 0.02 * y;
    GrindAndPatch nothing = new GrindAndPatch(0, 0, List.of(), List.of());
    assertEquals(nothing, work(plane, hall()));
    Polygon angle = (Polygon) hall().difference(box(3, 20).intersection(boxUpTo(4)));
    assertEquals(nothing, work(plane, angle));
  }

  /** Two flat-topped humps 10 mm high, 0.5 m in radius; they lift the plane by 0.16 mm. */
  @Test
  void eachHumpIsTold() {
    GrindAndPatch work = work((x, y) -> hump(x - 2, y - 5) + hump(x - 8, y - 5), hall());
    assertEquals(2, work.humps().size());
    Hump hump = work.humps().get(0);
    assertEquals(5, hump.y(), 0.5);
    assertEquals(0.010 - 0.00016 - 0.002, hump.height(), 0.00002);
    assertEquals(2 * Math.PI * 0.25, work.grindArea(), 0.05);
    assertEquals(0, work.patchVolume());
  }

  /** A pit of 1 m2 and 8 mm lowers the plane by 0.08 mm: 5.92 mm under the band. */
  @Test
  void pitIsPatchedUpToTheBand() {
    GrindAndPatch work =
        work((x, y) -> Math.max(Math.abs(x - 5), Math.abs(y - 5)) < 0.5 ? -0.008 : 0, hall());
    assertEquals(0.00592, work.patchVolume(), 0.00002);
    assertEquals(0, work.grindArea());
  }

  @Test
  void turningThePlanChangesNothing() {
    AffineTransformation turn = AffineTransformation.rotationInstance(0.7, 3, 4);
    DoubleBinaryOperator floor = (x, y) -> 0.006 * Math.sin(x + 0.3) * Math.cos(0.7 * y);
    DoubleBinaryOperator turned =
        (x, y) -> {
          double dx = x - 3;
          double dy = y - 4;
          return floor.applyAsDouble(
              3 + Math.cos(0.7) * dx + Math.sin(0.7) * dy,
              4 + Math.cos(0.7) * dy - Math.sin(0.7) * dx);
        };
    GrindAndPatch straight = work(floor, hall());
    GrindAndPatch oblique = work(turned, (Polygon) turn.transform(hall()));
    assertTrue(straight.grindArea() > 1);
    assertEquals(straight.grindArea(), oblique.grindArea(), 1e-6);
    assertEquals(straight.patchVolume(), oblique.patchVolume(), 1e-9);
  }

  @Test
  void sumsAreThoseOfTheParts() {
    Polygon angle = (Polygon) hall().difference(box(3, 20).intersection(boxUpTo(4)));
    for (int seed = 0; seed < 10; seed++) {
      double wave = 0.5 + 0.3 * seed;
      DoubleBinaryOperator floor = (x, y) -> 0.006 * Math.sin(wave * x + 0.3) * Math.cos(0.7 * y);
      GrindAndPatch parts = work(floor, hall(), angle);
      GrindSums sums = GrindAndPatch.sums(List.of(hall(), angle), floor, FOUR);
      assertEquals(parts.grindArea(), sums.grindArea(), 1e-9);
      assertEquals(parts.patchVolume(), sums.patchVolume(), 1e-12);
      double ground = parts.humps().stream().mapToDouble(Hump::volume).sum();
      assertEquals(ground, sums.grindVolume(), 1e-12);
      assertTrue(ground > 0);
    }
  }

  @Test
  void roomsHaveTheirOwnPlanes() {
    Polygon next = box(10, 20);
    assertEquals(0, work((x, y) -> x > 10 ? 0.05 : 0, hall(), next).grindArea());
  }

  @Test
  void tooSmallForAPlane() {
    Polygon strip = (Polygon) new GeometryFactory().toGeometry(new Envelope(0, 2, 0, 0.05));
    assertEquals(0, work((x, y) -> 0.5, strip).grindArea());
  }

  private static double hump(double x, double y) {
    return Math.hypot(x, y) < 0.5 ? 0.010 : 0;
  }

  private static GrindAndPatch work(DoubleBinaryOperator floor, Polygon... rooms) {
    return GrindAndPatch.of(List.of(rooms), floor, FOUR);
  }

  private static Polygon hall() {
    return box(0, 10);
  }

  private static Polygon boxUpTo(double y) {
    return (Polygon) new GeometryFactory().toGeometry(new Envelope(-1, 30, -1, y));
  }

  private static Polygon box(double from, double to) {
    GeometryFactory geometry = new GeometryFactory();
    return geometry.createPolygon(
        new Coordinate[] {
          new Coordinate(from, 0),
          new Coordinate(to, 0),
          new Coordinate(to, 10),
          new Coordinate(from, 10),
          new Coordinate(from, 0)
        });
  }
}
