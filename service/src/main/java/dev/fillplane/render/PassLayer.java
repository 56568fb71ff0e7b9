package dev.fillplane.render;

import dev.fillplane.pour.PouredBay;
import dev.fillplane.pour.Ribbon;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

/** Deep pockets and lower lifts, that the rest is poured over: their edge and their ribbons. */
final class PassLayer {

  private final Sheet sheet;
  private final List<PouredBay> bays;

  PassLayer(Sheet sheet) {
    this.sheet = sheet;
    bays =
        sheet.shows(Layer.PASSES)
            ? sheet.passesBefore().stream().filter(bay -> !bay.ribbons().isEmpty()).toList()
            : List.of();
  }

  boolean isEmpty() {
    return bays.isEmpty();
  }

  Markup draw() {
    Markup svg = new Markup();
    for (PouredBay bay : bays) {
      PathData path = new PathData();
      Geometry area = area(bay);
      for (int i = 0; i < area.getNumGeometries(); i++) {
        path.ring(((Polygon) area.getGeometryN(i)).getExteriorRing().getCoordinates());
      }
      line(svg, path, "#fff", 5, "none");
      line(svg, path, "#111", 2.4, "12 3 2 3");
    }
    return svg;
  }

  void label() {
    for (PouredBay bay : bays) {
      Coordinate at = area(bay).getInteriorPoint().getCoordinate();
      int first = bay.ribbons().get(0).order();
      int last = bay.ribbons().get(bay.ribbons().size() - 1).order();
      String text = "first: ribbons " + first + " to " + last;
      sheet.labels().near(new Label(text, at.x, at.y, Look.SPOT), 12);
    }
  }

  /** In px. */
  private Geometry area(PouredBay bay) {
    return CascadedPolygonUnion.union(bay.ribbons().stream().map(this::polygon).toList());
  }

  private Polygon polygon(Ribbon ribbon) {
    Coordinate[] ring = PathData.points(sheet.view(), ribbon.outline().rings().get(0));
    return Strip.GEOMETRY.createPolygon(ring);
  }

  private static void line(Markup svg, PathData path, String colour, double width, String dashes) {
    svg.leaf(
        "path",
        "fill",
        "none",
        "d",
        path,
        "stroke",
        colour,
        "stroke-width",
        width,
        "stroke-dasharray",
        dashes);
  }
}
