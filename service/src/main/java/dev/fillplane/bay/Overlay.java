package dev.fillplane.bay;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** Set operations on a lattice of 10 nm: cuts that meet, meet exactly, and no sliver arises. */
final class Overlay {

  static final PrecisionModel LATTICE = new PrecisionModel(1e8);

  private Overlay() {}

  static List<Polygon> common(Geometry a, Geometry b) {
    return polygons(OverlayNG.overlay(a, b, OverlayNG.INTERSECTION, LATTICE));
  }

  static List<Polygon> difference(Geometry a, Geometry b) {
    return polygons(OverlayNG.overlay(a, b, OverlayNG.DIFFERENCE, LATTICE));
  }

  static List<Polygon> union(Polygon a, Polygon b) {
    return polygons(OverlayNG.overlay(a, b, OverlayNG.UNION, LATTICE));
  }

  @SuppressWarnings("unchecked")
  static List<LineString> seam(Polygon a, Polygon b) {
    return (List<LineString>)
        LinearComponentExtracter.getLines(OverlayNG.overlay(a, b, OverlayNG.INTERSECTION, LATTICE));
  }

  /** The polygons of a geometry; where areas have nothing in common JTS tells an empty one. */
  @SuppressWarnings("unchecked")
  static List<Polygon> polygons(Geometry geometry) {
    List<Polygon> polygons = (List<Polygon>) PolygonExtracter.getPolygons(geometry);
    return polygons.stream().filter(polygon -> !polygon.isEmpty()).toList();
  }
}
