package dev.fillplane.render;

import dev.fillplane.depth.Contour;
import dev.fillplane.room.Position;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** Contours, dark on a light rim, with their depths where there is room. */
final class ContourLayer {

  private static final double[] TRIES = {0.5, 0.3, 0.7, 0.4, 0.6, 0.15, 0.85};
  private static final double SHORTEST = 45;
  private static final double LONG = 600;
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private ContourLayer() {}

  private static List<Contour> contours(Sheet sheet) {
    return sheet.shows(Layer.CONTOURS) ? sheet.plan().depth().contours().contours() : List.of();
  }

  static Markup draw(Sheet sheet) {
    PathData path = new PathData();
    for (Contour contour : contours(sheet)) {
      for (List<Position> line : contour.lines()) {
        Coordinate[] points = PathData.points(sheet.view(), line);
        if (points.length > 1) {
          path.line(PathData.simple(points));
        }
      }
    }
    Markup svg = new Markup();
    if (!path.isEmpty()) {
      svg.leaf(
          "path",
          "id",
          "depth-contours",
          "fill",
          "none",
          "d",
          path,
          "stroke",
          "#fff",
          "stroke-opacity",
          0.6,
          "stroke-width",
          2.4);
      svg.leaf("path", "fill", "none", "d", path, "stroke", "#222", "stroke-width", 0.9);
    }
    return svg;
  }

  /** After everything that matters more. */
  static void label(Sheet sheet) {
    for (Contour contour : contours(sheet)) {
      String text = sheet.heights().bare(contour.depth());
      for (List<Position> line : contour.lines()) {
        label(sheet, text, PathData.points(sheet.view(), line));
      }
    }
  }

  private static void label(Sheet sheet, String text, Coordinate[] points) {
    double length = points.length < 2 ? 0 : GEOMETRY.createLineString(points).getLength();
    if (length < SHORTEST) {
      return;
    }
    LengthIndexedLine along = new LengthIndexedLine(GEOMETRY.createLineString(points));
    int wanted = length > LONG ? 2 : 1;
    for (double share : TRIES) {
      Coordinate at = along.extractPoint(share * length);
      if (wanted > 0 && sheet.labels().place(new Label(text, at.x, at.y, Look.CONTOUR))) {
        wanted--;
      }
    }
  }
}
