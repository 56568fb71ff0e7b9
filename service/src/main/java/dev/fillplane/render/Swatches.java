package dev.fillplane.render;

/** Samples of colours and lines for the legend, drawn about the middle of the row. */
final class Swatches {

  static final double WIDTH = 30;

  private Swatches() {}

  static void number(Markup svg) {
    svg.open("g", "text-anchor", "middle");
    new Label("7", WIDTH / 2, 0, Look.RIBBON).write(svg);
    svg.close("g");
  }

  static void area(Markup svg, String fill) {
    svg.leaf("rect", "x", 0, "y", -8, "width", WIDTH, "height", 16, "fill", "#fff");
    svg.leaf(
        "rect",
        "x",
        0,
        "y",
        -8,
        "width",
        WIDTH,
        "height",
        16,
        "fill",
        fill,
        "stroke",
        "#111",
        "stroke-width",
        0.8);
  }

  static void line(Markup svg, String colour, double width, String dashes) {
    svg.leaf(
        "path",
        "fill",
        "none",
        "stroke",
        colour,
        "stroke-width",
        width,
        "stroke-dasharray",
        dashes,
        "d",
        "M0 0H" + Markup.number(WIDTH));
  }
}
