package dev.fillplane.render;

import dev.fillplane.depth.Grid;
import dev.fillplane.surface.Deviations;

/** Dots where the floor is unsure by more than a limit, with a line round them. */
final class DeviationLayer {

  static final String PATTERN = "depth-unsure";

  /** From here on a floor is unsure; near enough 5/64 in. */
  private static final double METRIC_LIMIT = 0.002;

  /** The same where heights are in inches: 1/16 in. */
  private static final double US_LIMIT = 0.0015875;

  private final Sheet sheet;
  private PathData path = new PathData();

  DeviationLayer(Sheet sheet) {
    this.sheet = sheet;
    if (sheet.shows(Layer.DEVIATION)) {
      sheet.plan().surface().deviations().ifPresent(this::trace);
    }
  }

  private void trace(Deviations told) {
    double[] values = new double[told.deviations().length];
    for (int i = 0; i < values.length; i++) {
      double deviation = told.deviations()[i];
      values[i] = deviation == Deviations.OUTSIDE ? Grid.OUTSIDE : deviation;
    }
    Grid grid =
        new Grid(told.originX(), told.originY(), told.cell(), told.columns(), told.rows(), values);
    path = new Bands(grid, sheet.view()).from(limit());
  }

  double limit() {
    return sheet.heights().metric() ? METRIC_LIMIT : US_LIMIT;
  }

  /** Whether the floor is sure everywhere, or the layer is not shown. */
  boolean isEmpty() {
    return path.isEmpty();
  }

  Markup draw() {
    Markup svg = new Markup();
    if (!isEmpty()) {
      svg.open("g", "id", "deviation", "clip-path", "url(#" + ColourLayer.CLIP + ")");
      svg.leaf("path", "fill", "url(#" + PATTERN + ")", "d", path);
      svg.leaf(
          "path",
          "fill",
          "none",
          "d",
          path,
          "stroke",
          "#111",
          "stroke-width",
          1.2,
          "stroke-dasharray",
          "1 3");
      svg.close("g");
    }
    return svg;
  }
}
