package dev.fillplane.render;

import dev.fillplane.pour.Pour;
import dev.fillplane.pour.Role;
import dev.fillplane.pour.Worker;
import java.util.List;

/** What the bars and columns of a timeline mean. */
final class TimeLegend {

  static final double HEIGHT = 62;

  private static final double ROW = 20;

  private TimeLegend() {}

  static Markup draw(Pour pour, String ids, double top) {
    Markup svg = new Markup();
    double x = 2;
    for (TaskLook look : TaskLook.values()) {
      x = swatch(svg, look.fill(ids), word(look), x, top);
    }
    double next = 2;
    next = swatch(svg, "#fff", "edge in time", next, top + ROW);
    next = swatch(svg, "#999", "no time to spare", next, top + ROW);
    swatch(svg, "#111", "late: it no longer closes", next, top + ROW);
    svg.text("text", note(pour), "x", 2, "y", top + 2 * ROW + 12, "font-size", 12);
    return svg;
  }

  private static String word(TaskLook look) {
    return look == TaskLook.of(Role.MEASURE_WATER) ? "measure water" : look.word();
  }

  private static double swatch(Markup svg, String fill, String text, double x, double top) {
    svg.leaf(
        "rect",
        "x",
        x,
        "y",
        top,
        "width",
        22,
        "height",
        13,
        "fill",
        fill,
        "stroke",
        "#111",
        "stroke-width",
        0.7);
    svg.text("text", text, "x", x + 27, "y", top + 11, "font-size", 12);
    return x + 27 + Lettering.width(text, 12) + 14;
  }

  private static String note(Pour pour) {
    List<Worker> idle = pour.workers().stream().filter(worker -> worker.tasks().isEmpty()).toList();
    String numbers = "Numbers are those of the batches, in their order.";
    return idle.isEmpty() ? numbers : numbers + " Standing by: " + idle.size() + " more.";
  }
}
