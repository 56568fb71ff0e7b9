package dev.fillplane.bay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** Areas that have nothing in common share no polygon, not an empty one. */
class OverlayTest {

  private static final Polygon SQUARE = box(0, 1, 0, 1);
  private static final Polygon ELSEWHERE = box(5, 6, 0, 1);

  private static Polygon box(double x1, double x2, double y1, double y2) {
    return (Polygon) new GeometryFactory().toGeometry(new Envelope(x1, x2, y1, y2));
  }

  @Test
  void nothingInCommon() {
    assertEquals(List.of(), Overlay.common(SQUARE, ELSEWHERE));
  }

  @Test
  void nothingLeft() {
    assertEquals(List.of(), Overlay.difference(SQUARE, SQUARE));
    assertEquals(1, Overlay.difference(SQUARE, ELSEWHERE).size());
  }

  @Test
  void stripThatIsANeckAllOver() throws ParseException {
    Polygon slanted =
        (Polygon) new WKTReader().read("POLYGON ((0 0, 0.05 0, 1.05 1, 2 1, 2 1.05, 1 1.05, 0 0))");
    assertTrue(Necks.isNeck(slanted));
    assertEquals(List.of(slanted), Necks.cut(slanted));
  }
}
