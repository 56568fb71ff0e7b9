package dev.fillplane.render;

import dev.fillplane.depth.GroundArea;
import java.util.List;

/** Areas to grind before the pour, hatched, with the height to take off. */
final class GroundLayer {

  static final String PATTERN = "depth-ground";

  private final Sheet sheet;
  private final List<GroundArea> areas;

  GroundLayer(Sheet sheet) {
    this.sheet = sheet;
    areas = sheet.shows(Layer.GROUND) ? sheet.plan().grinding().areas() : List.of();
  }

  boolean isEmpty() {
    return areas.isEmpty();
  }

  Markup draw() {
    Markup svg = new Markup();
    for (GroundArea area : areas) {
      PathData path = new PathData();
      area.outline().rings().forEach(ring -> path.ring(sheet.view(), ring));
      svg.leaf(
          "path",
          "class",
          "ground",
          "fill",
          "url(#" + PATTERN + ")",
          "fill-rule",
          "evenodd",
          "stroke",
          "#111",
          "stroke-width",
          1.6,
          "d",
          path);
    }
    return svg;
  }

  void label() {
    for (GroundArea area : areas) {
      String text = "grind " + sheet.heights().full(area.height());
      sheet.labels().near(sheet.label(text, area.x(), area.y(), Look.GUIDE), 4);
    }
  }
}
