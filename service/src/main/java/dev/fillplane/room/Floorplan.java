package dev.fillplane.room;

import java.util.List;
import java.util.OptionalInt;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * Finds the room of a position, fast for many positions.
 *
 * <p>A room holds the positions inside its outline and on it, but not those inside its islands.
 * Positions at most {@link #BESIDE} off every room belong to the nearest one, the earlier of two
 * equally near ones: a reading close to the wall may fall on the wrong side of a drawn outline. The
 * outlines must be valid, see {@link RoomCheck}. Safe to use from several threads.
 */
public final class Floorplan {

  /** How far beside its outline, or into an island, a position still belongs to a room. */
  public static final double BESIDE = 0.05;

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private record Indexed(
      Envelope reach,
      Envelope rectangle,
      IndexedPointInAreaLocator inside,
      IndexedFacetDistance sides) {

    static Indexed of(Polygon polygon) {
      Envelope reach = new Envelope(polygon.getEnvelopeInternal());
      reach.expandBy(BESIDE);
      IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(polygon);
      IndexedFacetDistance sides = new IndexedFacetDistance(polygon.getBoundary());
      // Both build their trees at the first question; asked here, threads share finished ones.
      inside.locate(polygon.getCoordinate());
      sides.distance(GEOMETRY.createPoint(polygon.getCoordinate()));
      Envelope rectangle = polygon.isRectangle() ? polygon.getEnvelopeInternal() : new Envelope();
      return new Indexed(reach, rectangle, inside, sides);
    }

    /** A rectangle needs no search. */
    boolean covers(Coordinate at) {
      return rectangle.covers(at) || (reach.covers(at) && inside.locate(at) != Location.EXTERIOR);
    }
  }

  private final List<Indexed> rooms;

  /** Indexes the outlines of {@code rooms}. */
  public Floorplan(List<Room> rooms) {
    this.rooms = rooms.stream().map(room -> Indexed.of(room.outline().polygon())).toList();
  }

  /** The number of the room, in the list given, that the position belongs to. */
  public OptionalInt roomAt(double x, double y) {
    Coordinate at = new Coordinate(x, y);
    for (int r = 0; r < rooms.size(); r++) {
      if (rooms.get(r).covers(at)) {
        return OptionalInt.of(r);
      }
    }
    return beside(at);
  }

  private OptionalInt beside(Coordinate at) {
    Point point = GEOMETRY.createPoint(at);
    int nearest = -1;
    double distance = BESIDE;
    for (int r = 0; r < rooms.size(); r++) {
      if (rooms.get(r).reach().covers(at)) {
        double own = rooms.get(r).sides().distance(point);
        if (nearest < 0 ? own <= distance : own < distance) {
          nearest = r;
          distance = own;
        }
      }
    }
    return nearest < 0 ? OptionalInt.empty() : OptionalInt.of(nearest);
  }
}
