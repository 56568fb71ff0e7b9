package dev.fillplane.bay;

import java.util.List;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * Gives pieces too small or too narrow to be poured to the piece that they share the longest edge
 * with.
 */
final class Crumbs {

  private static final double SMALL = 1e-4;

  private Crumbs() {}

  /** Changes {@code rows} in place; a crumb that touches nothing stays. */
  static void sweep(List<List<Polygon>> rows) {
    for (int row = 0; row < rows.size(); row++) {
      for (Polygon shape : List.copyOf(rows.get(row))) {
        if (isCrumb(shape) && giveAway(rows, row, shape)) {
          rows.get(row).remove(shape);
        }
      }
    }
  }

  private static boolean isCrumb(Polygon shape) {
    return shape.getArea() < SMALL || Necks.isNeck(shape);
  }

  private static boolean giveAway(List<List<Polygon>> rows, int row, Polygon crumb) {
    double longest = 0;
    List<Polygon> takers = null;
    int taker = -1;
    for (int near : new int[] {row - 1, row + 1}) {
      List<Polygon> shapes = near < 0 || near >= rows.size() ? List.of() : rows.get(near);
      for (int i = 0; i < shapes.size(); i++) {
        double length = shared(crumb, shapes.get(i));
        if (length > longest) {
          longest = length;
          takers = shapes;
          taker = i;
        }
      }
    }
    return takers != null && join(takers, taker, crumb);
  }

  private static boolean join(List<Polygon> takers, int taker, Polygon crumb) {
    List<Polygon> joined = Overlay.union(takers.get(taker), crumb);
    if (joined.size() != 1) {
      return false;
    }
    takers.set(taker, joined.get(0));
    return true;
  }

  private static double shared(Polygon a, Polygon b) {
    return Overlay.seam(a, b).stream().mapToDouble(LineString::getLength).sum();
  }
}
