package dev.fillplane.bay;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/** Divides a part of the floor along a straight line; a dam takes no floor. */
final class DamCut {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** Into the walls, so that the line meets them. */
  private static final double INTO_WALL = 0.001;

  private DamCut() {}

  /** The parts on both sides; the whole alone where the line does not divide it. */
  @SuppressWarnings("unchecked")
  static List<Polygon> parts(Polygon whole, Split dam) {
    LineSegment line =
        new LineSegment(JointLine.coordinate(dam.from()), JointLine.coordinate(dam.to()));
    double into = INTO_WALL / line.getLength();
    Coordinate[] ends = {line.pointAlong(-into), line.pointAlong(1 + into)};
    Geometry lines =
        OverlayNG.overlay(
            whole.getBoundary(), GEOMETRY.createLineString(ends), OverlayNG.UNION, Overlay.LATTICE);
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(lines);
    List<Polygon> parts = new ArrayList<>();
    for (Polygon part : (Collection<Polygon>) polygonizer.getPolygons()) {
      if (whole.contains(part.getInteriorPoint())) {
        parts.add(part);
      }
    }
    return parts;
  }
}
