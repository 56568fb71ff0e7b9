package dev.fillplane.render;

/** Patterns and the shape in which colours are cut. */
final class Defs {

  private Defs() {}

  static void write(Markup svg, Sheet sheet) {
    svg.open("defs");
    PathData rings = new PathData();
    sheet.request().rooms().stream()
        .flatMap(room -> room.outline().rings().stream())
        .forEach(ring -> rings.ring(sheet.view(), ring));
    svg.open("clipPath", "id", ColourLayer.CLIP);
    svg.leaf("path", "clip-rule", "evenodd", "d", rings).close("clipPath");
    hatch(svg, ColourLayer.BARE, 9, "M0 9L9 0", "#777", 0.9);
    hatch(svg, RoomLayer.ISLAND, 6, "M0 6L6 0M0 0L6 6", "#333", 1.1);
    ground(svg);
    dots(svg);
    svg.close("defs");
  }

  /** Dark dots with a light rim, seen on light and dark depths alike. */
  private static void dots(Markup svg) {
    svg.open(
        "pattern",
        "id",
        DeviationLayer.PATTERN,
        "width",
        8,
        "height",
        8,
        "patternUnits",
        "userSpaceOnUse");
    svg.leaf("circle", "cx", 4, "cy", 4, "r", 2, "fill", "#fff");
    svg.leaf("circle", "cx", 4, "cy", 4, "r", 1.2, "fill", "#111");
    svg.close("pattern");
  }

  /** Dark lines with a light rim, the other way than what is not poured. */
  private static void ground(Markup svg) {
    svg.open(
        "pattern",
        "id",
        GroundLayer.PATTERN,
        "width",
        8,
        "height",
        8,
        "patternUnits",
        "userSpaceOnUse");
    svg.leaf("path", "d", "M0 0L8 8", "fill", "none", "stroke", "#fff", "stroke-width", 3);
    svg.leaf("path", "d", "M0 0L8 8", "fill", "none", "stroke", "#111", "stroke-width", 1.3);
    svg.close("pattern");
  }

  private static void hatch(
      Markup svg, String id, double size, String path, String colour, double width) {
    svg.open("pattern", "id", id, "width", size, "height", size, "patternUnits", "userSpaceOnUse");
    svg.leaf("path", "d", path, "fill", "none", "stroke", colour, "stroke-width", width);
    svg.close("pattern");
  }
}
