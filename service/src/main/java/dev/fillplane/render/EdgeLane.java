package dev.fillplane.render;

import dev.fillplane.pour.Batch;
import dev.fillplane.pour.Healing;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** The age of the oldest wet edge that each batch meets, against the limits. */
final class EdgeLane {

  static final double HEIGHT = 78;

  /** So much of the lane stands above the age from which on an edge closes no more. */
  private static final double OVER = 1.45;

  private static final double COLUMN = 6;
  private static final double TEXT = 11;

  private final Stretch stretch;
  private final double healing;
  private final double limit;
  private final double top;
  private final Markup svg = new Markup();
  private double taken = Stretch.LEFT;

  /**
   * A lane.
   *
   * @param healing age from which on an edge closes no more; positive
   */
  EdgeLane(Stretch stretch, double healing, double top) {
    this.stretch = stretch;
    this.healing = healing;
    limit = Healing.of(healing).limit();
    this.top = top;
  }

  Markup draw(List<Batch> batches) {
    name("Edge met,", 14);
    name("min old", 29);
    line(0, "#111", "none");
    line(limit, "#111", "5 4");
    line(healing, "#111", "none");
    level("tight " + Minutes.tenth(limit), limit);
    level("late " + Minutes.tenth(healing), healing);
    for (Batch batch : batches) {
      if (batch.edgeAge().isPresent() && stretch.holds(batch.placed())) {
        column(stretch.x(batch.placed()), batch.edgeAge().getAsDouble());
      }
    }
    return svg;
  }

  private void name(String text, double down) {
    svg.text("text", text, "x", 2, "y", top + down, "font-size", 12, "font-weight", "bold");
  }

  private double y(double age) {
    double share = Math.max(0, Math.min(1, age / (OVER * healing)));
    return top + HEIGHT - 4 - share * (HEIGHT - 18);
  }

  private void line(double age, String colour, String dashes) {
    PathData path =
        new PathData()
            .line(new Coordinate(Stretch.LEFT, y(age)), new Coordinate(Stretch.RIGHT, y(age)));
    svg.leaf(
        "path",
        "d",
        path,
        "fill",
        "none",
        "stroke",
        colour,
        "stroke-width",
        1,
        "stroke-dasharray",
        dashes);
  }

  private void level(String text, double age) {
    svg.text(
        "text",
        text,
        "x",
        Stretch.LEFT - 4,
        "y",
        y(age) + 4,
        "font-size",
        TEXT,
        "text-anchor",
        "end");
  }

  /** Empty within the reserve, grey without one, black where it is late. */
  private void column(double x, double age) {
    String fill = age > healing ? "#111" : age > limit ? "#999" : "#fff";
    double left = Math.max(Stretch.LEFT, x - COLUMN / 2);
    svg.leaf(
        "rect",
        "class",
        "edge",
        "x",
        left,
        "y",
        y(age),
        "width",
        COLUMN,
        "height",
        y(0) - y(age),
        "fill",
        fill,
        "stroke",
        "#111",
        "stroke-width",
        0.8);
    label(x, age);
  }

  /** On a ground of its own, since the limits may run behind it. */
  private void label(double x, double age) {
    String text = Minutes.tenth(age);
    double half = Lettering.width(text, TEXT) / 2;
    if (x - half <= taken || x + half >= Stretch.RIGHT) {
      return;
    }
    double line = y(age) - 3;
    svg.leaf("rect", "x", x - half, "y", line - 9, "width", 2 * half, "height", 10, "fill", "#fff");
    svg.text("text", text, "x", x, "y", line, "font-size", TEXT, "text-anchor", "middle");
    taken = x + half + 3;
  }
}
