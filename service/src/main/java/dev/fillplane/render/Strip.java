package dev.fillplane.render;

import dev.fillplane.pour.Ribbon;
import java.util.List;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.math.Vector2D;

/**
 * A ribbon on the picture.
 *
 * @param order its place in the pour
 * @param rings its edges, px
 * @param middle its centre, or a place inside where that lies outside, px
 * @param across unit vector along the line over which it is narrowest
 */
record Strip(int order, List<Coordinate[]> rings, Coordinate middle, Vector2D across) {

  static final GeometryFactory GEOMETRY = new GeometryFactory();

  static Strip of(View view, Ribbon ribbon) {
    List<Coordinate[]> rings =
        ribbon.outline().rings().stream().map(r -> PathData.points(view, r)).toList();
    Polygon area = GEOMETRY.createPolygon(rings.get(0));
    Coordinate centre = area.getCentroid().getCoordinate();
    Coordinate middle = holds(area, centre) ? centre : area.getInteriorPoint().getCoordinate();
    LineString narrowest = new MinimumDiameter(area).getDiameter();
    Vector2D across = new Vector2D(narrowest.getCoordinateN(0), narrowest.getCoordinateN(1));
    return new Strip(ribbon.order(), rings, middle, unit(across));
  }

  private static Vector2D unit(Vector2D vector) {
    return vector.length() > 0 ? vector.normalize() : new Vector2D(1, 0);
  }

  /** A place so many px along the ribbon from its middle, and so many across it. */
  Coordinate at(double along, double aside) {
    Vector2D shift = across.rotateByQuarterCircle(1).multiply(along).add(across.multiply(aside));
    return shift.translate(middle);
  }

  boolean holds(Coordinate at) {
    return holds(GEOMETRY.createPolygon(rings.get(0)), at);
  }

  private static boolean holds(Polygon area, Coordinate at) {
    return SimplePointInAreaLocator.locate(at, area) == Location.INTERIOR;
  }
}
