package dev.fillplane.render;

import dev.fillplane.supply.Lift;
import java.util.List;

/** Where the lower lifts of a deep pour end: each fills only what lies deeper than those above. */
final class LiftLayer {

  private final Sheet sheet;
  private final List<Lift> lifts;

  LiftLayer(Sheet sheet) {
    this.sheet = sheet;
    lifts = sheet.shows(Layer.LIFTS) ? sheet.plan().quantities().lifts() : List.of();
  }

  boolean isEmpty() {
    return lifts.size() < 2;
  }

  Svg draw() {
    Svg svg = new Svg();
    if (isEmpty()) {
      return svg;
    }
    svg.open("g", "id", "lifts", "clip-path", "url(#" + ColourLayer.CLIP + ")");
    Bands bands = new Bands(sheet.plan().depth().grid(), sheet.view());
    double above = 0;
    for (int i = lifts.size() - 1; i > 0; i--) {
      above += lifts.get(i).maximumDepth();
      PathData path = bands.from(above);
      if (!path.isEmpty()) {
        line(svg, path, "#fff", 5, "none");
        line(svg, path, "#111", 2.4, "12 3 2 3");
      }
    }
    return svg.close("g");
  }

  private static void line(Svg svg, PathData path, String colour, double width, String dashes) {
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
