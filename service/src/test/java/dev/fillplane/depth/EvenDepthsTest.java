package dev.fillplane.depth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class EvenDepthsTest {

  private static final Polygon PART =
      (Polygon) new GeometryFactory().toGeometry(new Envelope(1, 3, 0, 4));

  @Test
  void sameDepthEverywhere() {
    EvenDepths depths = new EvenDepths(20, 0.008);
    assertEquals(0.008, depths.at(2, 2));
    assertEquals(8, depths.within(PART).area(), 1e-12);
    assertEquals(0.064, depths.within(PART).volume(), 1e-12);
    assertEquals(20, depths.deeperThan(0.005).area());
    assertEquals(0.06, depths.deeperThan(0.005).volume(), 1e-12);
    assertEquals(new Fill(0, 0), depths.deeperThan(0.008));
  }

  @Test
  void nothingIsPouredWhereItIsNotDeep() {
    assertEquals(new Fill(0, 0), new EvenDepths(20, 0).within(PART));
  }
}
