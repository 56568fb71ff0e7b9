package dev.fillplane.render;

import java.util.List;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.math.Vector2D;

/** An arrow in each bay, across its first ribbon, in the direction of travel. */
final class TravelArrows {

  private static final double LONGEST = 70;
  private static final double SHORTEST = 24;
  private static final double OFF_NUMBERS = 20;

  /** Cosine from which on the first ribbon tells the direction. */
  private static final double CLEAR = 0.3;

  private final Sheet sheet;

  private TravelArrows(Sheet sheet) {
    this.sheet = sheet;
  }

  static Markup draw(Sheet sheet, List<List<Strip>> bays) {
    TravelArrows arrows = new TravelArrows(sheet);
    Markup svg = new Markup();
    for (List<Strip> bay : bays) {
      Strip first = bay.get(0);
      Coordinate last = bay.get(bay.size() - 1).middle();
      if (first.middle().distance(last) > SHORTEST) {
        LineSegment arrow = arrows.beside(arrow(first, last));
        Symbols.travel(svg, arrow.p0, arrow.p1);
        sheet.labels().block(arrow.p0, arrow.p1, 7);
      }
    }
    return svg;
  }

  /** Straight across the first ribbon, on the side of the last. */
  private static LineSegment arrow(Strip first, Coordinate last) {
    Vector2D toLast = new Vector2D(first.middle(), last);
    double length = Math.min(LONGEST, toLast.length() / 2);
    double ahead = first.across().dot(toLast.normalize());
    Vector2D along =
        Math.abs(ahead) > CLEAR ? first.across().multiply(Math.signum(ahead)) : toLast.normalize();
    return new LineSegment(first.middle(), along.multiply(length).translate(first.middle()));
  }

  /** Off the numbers, on the side on which it stays in a room. */
  private LineSegment beside(LineSegment line) {
    for (double off : new double[] {OFF_NUMBERS, -OFF_NUMBERS}) {
      LineSegment moved = line.offset(off);
      if (inRoom(moved.p0) && inRoom(moved.p1)) {
        return moved;
      }
    }
    return line;
  }

  private boolean inRoom(Coordinate at) {
    Coordinate onPlan = sheet.view().onPlan(at.x, at.y);
    return sheet.rooms().stream()
        .anyMatch(room -> SimplePointInAreaLocator.locate(onPlan, room) == Location.INTERIOR);
  }
}
