package dev.fillplane.render;

import dev.fillplane.finding.Stopped;

/** Depths in colours, cut at the outlines; what is not poured is hatched on white. */
final class ColourLayer {

  static final String CLIP = "depth-rooms";
  static final String BARE = "depth-bare";

  private ColourLayer() {}

  static Markup draw(Sheet sheet) {
    Markup svg = new Markup();
    svg.open("g", "clip-path", "url(#" + CLIP + ")", "fill-rule", "nonzero");
    if (!sheet.shows(Layer.DEPTH)) {
      rectangle(svg, sheet, "#fff");
      return svg.close("g");
    }
    ground(svg, sheet);
    Bands bands = new Bands(sheet.plan().depth().grid(), sheet.view());
    int first = sheet.classes().first() + (sheet.partlyBare() ? 0 : 1);
    for (int i = first; i < sheet.classes().count(); i++) {
      Stopped.ifInterrupted();
      PathData path = bands.from(sheet.classes().from(i));
      if (!path.isEmpty()) {
        svg.leaf("path", "fill", sheet.classes().colour(i), "d", path);
      }
    }
    return svg.close("g");
  }

  private static void ground(Markup svg, Sheet sheet) {
    rectangle(svg, sheet, "#fff");
    rectangle(
        svg,
        sheet,
        sheet.partlyBare()
            ? "url(#" + BARE + ")"
            : sheet.classes().colour(sheet.classes().first()));
  }

  private static void rectangle(Markup svg, Sheet sheet, String fill) {
    View view = sheet.view();
    svg.leaf(
        "rect",
        "x",
        view.left(),
        "y",
        view.top(),
        "width",
        view.width(),
        "height",
        view.height(),
        "fill",
        fill);
  }
}
