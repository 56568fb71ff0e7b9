package dev.fillplane.room;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * The edge of a room on plan: the first ring goes round it, every further ring round an island that
 * is not poured (a column, a fixed unit). Each ring closes on its first position. On the wire it is
 * a GeoJSON polygon.
 */
public record Outline(List<List<Position>> rings) {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** Copies the rings. */
  public Outline {
    rings = rings.stream().map(List::copyOf).toList();
  }

  /**
   * The same as a polygon; not necessarily a valid one.
   *
   * @throws IllegalArgumentException if a ring has fewer than 4 positions or is not closed
   */
  public Polygon polygon() {
    LinearRing[] all = rings.stream().map(Outline::ring).toArray(LinearRing[]::new);
    LinearRing[] holes = new LinearRing[all.length - 1];
    System.arraycopy(all, 1, holes, 0, holes.length);
    return GEOMETRY.createPolygon(all[0], holes);
  }

  /** The edge of a polygon, the outer ring anticlockwise, islands clockwise. */
  public static Outline of(Polygon polygon) {
    List<List<Position>> rings = new ArrayList<>();
    rings.add(positions(polygon.getExteriorRing(), true));
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      rings.add(positions(polygon.getInteriorRingN(i), false));
    }
    return new Outline(rings);
  }

  private static List<Position> positions(LinearRing ring, boolean anticlockwise) {
    boolean turn = Orientation.isCCW(ring.getCoordinates()) != anticlockwise;
    LinearRing turned = turn ? ring.reverse() : ring;
    return Arrays.stream(turned.getCoordinates()).map(c -> new Position(c.x, c.y)).toList();
  }

  private static LinearRing ring(List<Position> positions) {
    return GEOMETRY.createLinearRing(
        positions.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new));
  }
}
