package dev.fillplane.render;

/** Patterns and the shape in which colours are cut. */
final class Defs {

  private Defs() {}

  static void write(Svg svg, Sheet sheet) {
    svg.open("defs");
    PathData rings = new PathData();
    sheet.request().rooms().stream()
        .flatMap(room -> room.outline().rings().stream())
        .forEach(ring -> rings.ring(sheet.view(), ring));
    svg.open("clipPath", "id", ColourLayer.CLIP);
    svg.leaf("path", "clip-rule", "evenodd", "d", rings).close("clipPath");
    hatch(svg, ColourLayer.BARE, 9, "M0 9L9 0", "#777", 0.9);
    hatch(svg, RoomLayer.ISLAND, 6, "M0 6L6 0M0 0L6 6", "#333", 1.1);
    svg.close("defs");
  }

  private static void hatch(
      Svg svg, String id, double size, String path, String colour, double width) {
    svg.open("pattern", "id", id, "width", size, "height", size, "patternUnits", "userSpaceOnUse");
    svg.leaf("path", "d", path, "fill", "none", "stroke", colour, "stroke-width", width);
    svg.close("pattern");
  }
}
