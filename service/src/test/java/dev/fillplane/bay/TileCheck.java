package dev.fillplane.bay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.depth.Depths;
import org.locationtech.jts.geom.Polygon;

/** Checks that ribbons tile their bay without gap or overlap, by areas alone. */
final class TileCheck {

  private TileCheck() {}

  /** In area, whatever is poured. */
  static void assertTiles(Bay bay) {
    double area = 0;
    for (Strip strip : bay.strips()) {
      assertTrue(strip.polygon().isValid());
      double off = strip.polygon().difference(bay.polygon()).getArea();
      assertEquals(0, off, 1e-6, "ribbon " + strip.order() + " leaves " + bay.id());
      area += strip.polygon().getArea();
      for (Strip other : bay.strips().subList(strip.order(), bay.strips().size())) {
        if (strip.polygon().intersects(other.polygon())) {
          double overlap = strip.polygon().intersection(other.polygon()).getArea();
          assertEquals(0, overlap, 1e-6, strip.order() + " over " + other.order());
        }
      }
    }
    double whole = bay.polygon().getArea();
    assertEquals(whole, area, 1e-6 * whole, bay.id());
  }

  /** And in volume, of a bay that is poured in one pass. */
  static void assertTiles(Bay bay, Depths depths) {
    assertTiles(bay);
    Polygon part = bay.polygon();
    double poured = depths.within(part).volume();
    double volume = bay.strips().stream().mapToDouble(strip -> strip.fill().volume()).sum();
    assertEquals(poured, volume, 1e-6 * poured + 1e-12);
    assertEquals(poured, bay.fill().volume(), 1e-6 * poured + 1e-12);
  }
}
