package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class ConvexShellTest {

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

  @Test
  void roomsWithIslandsOrInnerCornersTellNothing() {
    String part = "POLYGON ((0.1 0.1, 0.2 0.1, 0.2 0.2, 0.1 0.1))";
    assertFalse(inside("POLYGON ((0 0, 6 0, 6 4, 3 4, 3 2, 0 2, 0 0))", part));
    assertFalse(inside("POLYGON ((0 0, 6 0, 6 4, 0 4, 0 0), (2 1, 2 2, 3 2, 2 1))", part));
  }

  /** Against the library, for parts that miss the edge by more than rounding. */
  @Test
  void agreesWithCovers() {
    Random random = new Random(11);
    Polygon room = (Polygon) turned("POLYGON ((0 0, 6 0, 7 2, 6 4, 0 4, -1 3, 0 0))", 0.3);
    int within = 0;
    for (int i = 0; i < 500; i++) {
      double x = 8 * random.nextDouble() - 2;
      double y = 6 * random.nextDouble() - 1;
      Envelope box = new Envelope(x, x + random.nextDouble(), y, y + random.nextDouble());
      Polygon part = (Polygon) new GeometryFactory().toGeometry(box);
      within += room.covers(part) ? 1 : 0;
      assertEquals(room.covers(part), ConvexShell.of(room).contains(part), part.toText());
    }
    assertTrue(within > 50 && within < 450, within + " parts inside");
  }

  private static boolean inside(String room, String part) {
    return ConvexShell.of(polygon(room)).contains(polygon(part));
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
