package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class RoomShellTest {

  private static final String HALL = "POLYGON ((0 0, 6 0, 6 2, 6 4, 0 4, 0 0))";

  @Test
  void partIsInside() {
    assertTrue(inside(HALL, "POLYGON ((1 1, 2 1, 2 4, 1 4, 1 1))"));
    assertTrue(inside("POLYGON ((0 0, 0 4, 6 4, 6 0, 0 0))", "POLYGON ((0 0, 2 0, 2 4, 0 0))"));
  }

  @Test
  void partSticksOut() {
    assertFalse(inside(HALL, "POLYGON ((1 1, 2 1, 2 4.001, 1 4, 1 1))"));
    assertFalse(inside(HALL, "POLYGON ((7 1, 8 1, 8 3, 7 3, 7 1))"));
  }

  @Test
  void roundingIsForgiven() {
    assertTrue(inside(HALL, "POLYGON ((1 1, 2 1, 2 4.00000001, 1 4, 1 1))"));
  }

  /** An L with the inner corner at (3, 2). */
  @Test
  void innerCorners() {
    String room = "POLYGON ((0 0, 6 0, 6 4, 3 4, 3 2, 0 2, 0 0))";
    assertTrue(inside(room, "POLYGON ((0 1, 6 1, 6 2, 3 2, 0 2, 0 1))"), "along a wall");
    assertTrue(inside(room, "POLYGON ((3 2, 4 1, 4 4, 3 4, 3 2))"), "along another");
    assertFalse(inside(room, "POLYGON ((0 1, 4 1, 4 3, 0 1))"), "round the corner");
    assertFalse(inside(room, "POLYGON ((1 1, 1 3, 2 3, 2 1, 1 1))"), "out through a wall");
    assertFalse(
        inside(
            "POLYGON ((0 0, 9 0, 9 4, 6 4, 6 2, 3 2, 3 4, 0 4, 0 0))",
            "POLYGON ((3 3, 6 3, 6 3.5, 3 3.5, 3 3))"),
        "from wall to wall past the room");
  }

  @Test
  void nearAnIslandNothingIsTold() {
    String room = "POLYGON ((0 0, 6 0, 6 4, 0 4, 0 0), (2 1, 2 2, 3 2, 2 1))";
    assertFalse(inside(room, "POLYGON ((1 0.5, 5 0.5, 5 3, 1 3, 1 0.5))"));
    assertTrue(inside(room, "POLYGON ((4 1, 5 1, 5 4, 4 4, 4 1))"));
  }

  /** Against the library, for parts that miss the edge by more than rounding. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "POLYGON ((0 0, 6 0, 7 2, 6 4, 0 4, -1 3, 0 0))",
        "POLYGON ((0 0, 6 0, 6 4, 3 4, 3 2, 0 2, 0 0))",
        "POLYGON ((0 4, 2 0, 5 3, 6 0, 7 4, 5 3.5, 3 4, 2 2, 0 4))"
      })
  void agreesWithCovers(String shape) {
    Random random = new Random(11);
    Polygon room = (Polygon) turned(shape, 0.3);
    int within = 0;
    for (int i = 0; i < 1000; i++) {
      double x = 8 * random.nextDouble() - 2;
      double y = 6 * random.nextDouble() - 1;
      double size = 0.2 + random.nextInt(2);
      Envelope box =
          new Envelope(x, x + size * random.nextDouble(), y, y + size * random.nextDouble());
      Polygon part = (Polygon) new GeometryFactory().toGeometry(box);
      within += room.covers(part) ? 1 : 0;
      assertEquals(room.covers(part), RoomShell.of(room).contains(part), part.toText());
    }
    assertTrue(within > 50 && within < 900, within + " parts inside");
  }

  private static boolean inside(String room, String part) {
    return RoomShell.of(polygon(room)).contains(polygon(part));
  }

  private static Geometry turned(String room, double angle) {
    return AffineTransformation.rotationInstance(angle).transform(polygon(room));
  }

  private static Polygon polygon(String text) {
    try {
      return (Polygon) new WKTReader().read(text);
    } catch (ParseException e) {
      throw new IllegalArgumentException(text, e);
    }
  }
}
