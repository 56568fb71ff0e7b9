package dev.fillplane.render;

import dev.fillplane.depth.ContourLevels;
import dev.fillplane.quantity.UnitSystem;

/** The depth classes of a map: from one contour to the next, so that a colour ends at a line. */
final class DepthClasses {

  /** Less than this is nothing to pour. */
  private static final double NOTHING = 5e-5;

  private final double[] levels;
  private final Heights heights;
  private final int first;

  DepthClasses(UnitSystem units, double minimumDepth, double maximumDepth) {
    levels = ContourLevels.choose(units, maximumDepth);
    heights = new Heights(units);
    first = of(minimumDepth);
  }

  /** The shallowest class that occurs; it has the lightest colour. */
  int first() {
    return first;
  }

  /** One more than the deepest class. */
  int count() {
    return levels.length + 1;
  }

  /** Where a class begins. */
  double from(int index) {
    return index == 0 ? NOTHING : levels[index - 1];
  }

  String colour(int index) {
    int steps = levels.length - first;
    return DepthRamp.colour(steps == 0 ? 0.25 : (index - first) / (double) steps);
  }

  /** The class of a depth. */
  int of(double depth) {
    int index = 0;
    while (index < levels.length && depth >= levels[index]) {
      index++;
    }
    return index;
  }

  /** What the legend says. */
  String text(int index) {
    String from = index == 0 ? "0" : heights.bare(levels[index - 1]);
    return index == levels.length
        ? "over " + from + " " + heights.unit()
        : from + " to " + heights.full(levels[index]);
  }

  /** Difference of two contours; 0 where there is none. */
  double step() {
    return levels.length == 0 ? 0 : levels[0];
  }
}
