package dev.fillplane.render;

import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Where a shape lies, as a GeoJSON geometry on plan.
 *
 * @param type of geometry
 * @param coordinates a position, or lists of positions as the type wants them; outer rings
 *     anticlockwise
 */
public record PlanShapeGeometry(String type, Object coordinates) {

  static PlanShapeGeometry point(Position position) {
    return new PlanShapeGeometry("Point", position);
  }

  static PlanShapeGeometry line(Position from, Position to) {
    return new PlanShapeGeometry("LineString", List.of(from, to));
  }

  static PlanShapeGeometry lines(List<List<Position>> lines) {
    return new PlanShapeGeometry("MultiLineString", lines);
  }

  static PlanShapeGeometry area(Outline outline) {
    return new PlanShapeGeometry("Polygon", turned(outline.polygon()));
  }

  /** The polygons of a geometry. */
  static PlanShapeGeometry areas(Geometry geometry) {
    List<List<List<Position>>> areas = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      areas.add(turned((Polygon) geometry.getGeometryN(i)));
    }
    return new PlanShapeGeometry("MultiPolygon", areas);
  }

  private static List<List<Position>> turned(Polygon polygon) {
    return Outline.of(polygon).rings();
  }
}
