package dev.fillplane.render;

import org.locationtech.jts.geom.Coordinate;

/** A bar of a round length. */
final class ScaleBar {

  static final double HEIGHT = 40;

  private static final double LONGEST = 190;
  private static final double[] ROUND = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};

  private ScaleBar() {}

  /** The longest round length that fits, in the unit of lengths on plan. */
  static double length(double pxPerUnit) {
    double length = ROUND[0];
    for (double round : ROUND) {
      length = round * pxPerUnit <= LONGEST ? round : length;
    }
    return length;
  }

  static Markup draw(Sheet sheet, double x, double y) {
    double perUnit = sheet.view().scale() * sheet.heights().planUnit();
    double length = length(perUnit);
    double width = length * perUnit;
    Markup svg = new Markup();
    svg.leaf(
        "rect",
        "x",
        x,
        "y",
        y,
        "width",
        width,
        "height",
        6,
        "fill",
        "#fff",
        "stroke",
        "#111",
        "stroke-width",
        1.2);
    svg.leaf("rect", "x", x, "y", y, "width", width / 2, "height", 6, "fill", "#111");
    Symbols.stroke(
        svg, new PathData().line(new Coordinate(x, y - 4), new Coordinate(x, y + 6)), "#111", 1.2);
    svg.text("text", "0", "x", x, "y", y + 20, "font-size", 11, "text-anchor", "middle");
    return svg.text(
        "text",
        sheet.heights().length(length),
        "x",
        x + width,
        "y",
        y + 20,
        "font-size",
        11,
        "text-anchor",
        "middle");
  }
}
