package dev.fillplane.bay;

import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * A deep part that is filled before the bay over it.
 *
 * @param polygon its part of the bay
 * @param last order of the last ribbon of the bay over it
 * @param wayOut where people leave it: on the way by which the bay over it is left
 */
record Pocket(Polygon polygon, int last, Position wayOut) {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** Nearer to the door than this a pocket is left by the door itself. */
  private static final double AT_THE_DOOR = 1.5;

  private static final double CRUMB = 1e-4;

  /** The pockets of a bay, that farthest from the way out first. */
  static List<Pocket> under(Bay bay, List<Polygon> polygons) {
    List<Pocket> pockets = new ArrayList<>();
    for (Polygon polygon : polygons) {
      pockets.add(under(bay, polygon));
    }
    pockets.sort(Comparator.comparingInt(Pocket::last));
    return pockets;
  }

  private static Pocket under(Bay bay, Polygon polygon) {
    Point door = GEOMETRY.createPoint(JointLine.coordinate(bay.wayOut()));
    boolean atDoor = polygon.distance(door) <= AT_THE_DOOR;
    for (int i = bay.strips().size() - 1; i >= 0; i--) {
      Polygon strip = bay.strips().get(i).polygon();
      if (strip.getEnvelopeInternal().intersects(polygon.getEnvelopeInternal())) {
        for (Polygon common : Overlay.common(strip, polygon)) {
          if (common.getArea() >= CRUMB) {
            Position inside = Travel.position(common.getInteriorPoint().getCoordinate());
            return new Pocket(polygon, i + 1, atDoor ? bay.wayOut() : inside);
          }
        }
      }
    }
    return new Pocket(polygon, 0, bay.wayOut());
  }
}
