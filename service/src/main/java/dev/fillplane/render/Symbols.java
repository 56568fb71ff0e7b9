package dev.fillplane.render;

import org.locationtech.jts.geom.Coordinate;

/** The small symbols of map and legend, told apart by shape. */
final class Symbols {

  private Symbols() {}

  /** A reading. */
  static void dot(Markup svg, double x, double y) {
    svg.leaf(
        "circle",
        "cx",
        x,
        "cy",
        y,
        "r",
        ReadingLayer.DOT,
        "fill",
        "#111",
        "stroke",
        "#fff",
        "stroke-width",
        1);
  }

  /** A planned joint with its stop. */
  static void joint(Markup svg, Coordinate from, Coordinate to) {
    PathData line = new PathData().line(from, to);
    stroke(svg, line, "#fff", 8);
    stroke(svg, line, "#111", 5);
    svg.leaf(
        "path",
        "fill",
        "none",
        "stroke",
        "#fff",
        "stroke-width",
        2,
        "stroke-dasharray",
        "2 4",
        "d",
        line);
  }

  /** A straightedge on two high places. */
  static void edge(Markup svg, Coordinate from, Coordinate to) {
    PathData line = new PathData().line(from, to);
    stroke(svg, line, "#fff", 5);
    stroke(svg, line, "#111", 3);
    stroke(svg, line, "#fff", 1);
    for (Coordinate contact : new Coordinate[] {from, to}) {
      svg.leaf(
          "rect",
          "x",
          contact.x - 3.5,
          "y",
          contact.y - 3.5,
          "width",
          7,
          "height",
          7,
          "fill",
          "#111",
          "stroke",
          "#fff",
          "stroke-width",
          1);
    }
  }

  /** Round a reading that does not fit. */
  static void ring(Markup svg, double x, double y) {
    svg.leaf(
        "circle",
        "cx",
        x,
        "cy",
        y,
        "r",
        ReadingLayer.RING - 1,
        "fill",
        "none",
        "stroke",
        "#fff",
        "stroke-width",
        4);
    svg.leaf(
        "circle",
        "cx",
        x,
        "cy",
        y,
        "r",
        ReadingLayer.RING - 1,
        "fill",
        "none",
        "stroke",
        "#111",
        "stroke-width",
        1.8,
        "stroke-dasharray",
        "4 2");
  }

  /** The high spot: a full triangle, point up. */
  static void high(Markup svg, double x, double y) {
    triangle(svg, x, y, -1, "#111", "#fff");
  }

  /** The low spot: an empty triangle, point down. */
  static void low(Markup svg, double x, double y) {
    triangle(svg, x, y, 1, "#fff", "#111");
  }

  private static void triangle(
      Markup svg, double x, double y, int down, String fill, String stroke) {
    Coordinate left = new Coordinate(x - 8, y - down * 6);
    PathData path =
        new PathData()
            .ring(left, new Coordinate(x + 8, y - down * 6), new Coordinate(x, y + down * 8), left);
    svg.leaf("path", "fill", fill, "stroke", stroke, "stroke-width", 2, "d", path);
  }

  /** A depth pin. */
  static void pin(Markup svg, double x, double y) {
    PathData cross =
        new PathData()
            .line(new Coordinate(x - 4, y), new Coordinate(x + 4, y))
            .line(new Coordinate(x, y - 4), new Coordinate(x, y + 4));
    stroke(svg, cross, "#fff", 3.6);
    stroke(svg, cross, "#111", 1.6);
  }

  /** A probe. */
  static void probe(Markup svg, double x, double y) {
    Coordinate left = new Coordinate(x - 6, y);
    PathData path =
        new PathData()
            .ring(
                left,
                new Coordinate(x, y - 6),
                new Coordinate(x + 6, y),
                new Coordinate(x, y + 6),
                left);
    svg.leaf("path", "fill", "#fff", "stroke", "#111", "stroke-width", 1.8, "d", path);
  }

  /** A screed rail. */
  static void rail(Markup svg, Coordinate from, Coordinate to) {
    PathData line = new PathData().line(from, to);
    stroke(svg, line, "#fff", 7);
    stroke(svg, line, "#111", 5);
    stroke(svg, line, "#fff", 2);
  }

  /** An arrow for the direction of travel. */
  static void travel(Markup svg, Coordinate from, Coordinate to) {
    double length = Math.max(1e-9, from.distance(to));
    double alongX = (to.x - from.x) / length;
    double alongY = (to.y - from.y) / length;
    Coordinate one =
        new Coordinate(to.x - 11 * alongX - 6 * alongY, to.y - 11 * alongY + 6 * alongX);
    Coordinate other =
        new Coordinate(to.x - 11 * alongX + 6 * alongY, to.y - 11 * alongY - 6 * alongX);
    PathData arrow = new PathData().line(from, to).line(one, to, other);
    stroke(svg, arrow, "#fff", 6);
    stroke(svg, arrow, "#111", 2.6);
  }

  /** A place for one more reading: a dark square with its number. */
  static void next(Markup svg, double x, double y, int number) {
    double half = NextLayer.HALF;
    svg.leaf(
        "rect",
        "x",
        x - half,
        "y",
        y - half,
        "width",
        2 * half,
        "height",
        2 * half,
        "fill",
        "#111",
        "stroke",
        "#fff",
        "stroke-width",
        1.5);
    svg.text(
        "text",
        Integer.toString(number),
        "x",
        x,
        "y",
        y + 4,
        "font-size",
        number > 9 ? 10 : 12,
        "font-weight",
        "bold",
        "fill",
        "#fff",
        "text-anchor",
        "middle");
  }

  static void stroke(Markup svg, PathData path, String colour, double width) {
    svg.leaf("path", "fill", "none", "stroke", colour, "stroke-width", width, "d", path);
  }
}
