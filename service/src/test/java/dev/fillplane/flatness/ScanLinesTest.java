package dev.fillplane.flatness;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** Runs keep 1 mm away from every wall. */
class ScanLinesTest {

  @Test
  void lineAlongAnInnerWallEndsAtItsCorner() throws ParseException {
    assertRuns("POLYGON((0 0,6 0,6 2,3 2,3 4,0 4,0 0))", 2, 0.001, 2.999);
    assertRuns("POLYGON((0 0,3 0,3 2,6 2,6 4,0 4,0 0))", 2, 0.001, 2.999);
    assertRuns("POLYGON((0 0,6 0,6 2,3 2,3 4,0 4,0 0))", 1.9, 0.001, 5.999);
  }

  @Test
  void holePartsTheLine() throws ParseException {
    String ring = "POLYGON((0 0,6 0,6 4,0 4,0 0),(1 1,2 1,2 2,1 2,1 1))";
    assertRuns(ring, 1.5, 0.001, 0.999, 2.001, 5.999);
    assertRuns(ring, 2, 0.001, 0.999, 2.001, 5.999);
    assertRuns(ring, 2.1, 0.001, 5.999);
  }

  @Test
  void outsideThereIsNothing() throws ParseException {
    assertRuns("POLYGON((0 0,6 0,6 4,0 4,0 0))", 4.5);
    assertRuns("POLYGON((0 0,6 0,6 4,0 4,0 0))", 4);
  }

  private static void assertRuns(String wkt, double v, double... runs) throws ParseException {
    Polygon room = (Polygon) new WKTReader().read(wkt);
    assertArrayEquals(runs, ScanLines.of(room, new Frame(1, 0)).runs(v), 1e-12);
  }
}
