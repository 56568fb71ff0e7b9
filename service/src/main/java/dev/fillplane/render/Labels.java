package dev.fillplane.render;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.quadtree.Quadtree;

/**
 * Finds room for the texts of a map: first come, first served. No text overlaps another, none
 * leaves the map; symbols are kept free too, except for texts that must be shown.
 */
final class Labels {

  private static final double[] DISTANCES = {0, 8, 18, 30};
  private static final int[][] SIDES = {
    {1, 0}, {-1, 0}, {0, -1}, {0, 1}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}
  };

  private final Envelope map;
  private final Quadtree symbols = new Quadtree();
  private final Quadtree texts = new Quadtree();
  private final List<Label> placed = new ArrayList<>();

  /**
   * No labels yet.
   *
   * @param map px in which they must stay
   */
  Labels(Envelope map) {
    this.map = map;
  }

  /** Keeps a place free for a symbol. */
  void block(double x, double y, double radius) {
    Envelope box = new Envelope(x - radius, x + radius, y - radius, y + radius);
    symbols.insert(box, box);
  }

  /** Keeps a line free. */
  void block(Coordinate from, Coordinate to, double radius) {
    int steps = (int) Math.ceil(from.distance(to) / Math.max(4, 2 * radius));
    for (int i = 0; i <= steps; i++) {
      double share = steps == 0 ? 0 : i / (double) steps;
      block(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y), radius);
    }
  }

  /** Shows the label where it is, if there is room. */
  boolean place(Label label) {
    return free(label.box(), symbols) && placeOverSymbols(label);
  }

  /** Shows the label where it is, if no other label is there. */
  boolean placeOverSymbols(Label label) {
    Envelope box = label.box();
    if (label.text().isEmpty() || !map.covers(box) || !free(box, texts)) {
      return false;
    }
    texts.insert(box, box);
    placed.add(label);
    return true;
  }

  /** Shows the label close beside a symbol of a radius, on the first side with room. */
  boolean beside(Label label, double radius) {
    for (int i = 0; i < 8; i++) {
      if (place(besides(label, radius + (i < 4 ? 0 : 6), SIDES[i % 4]))) {
        return true;
      }
    }
    return false;
  }

  /** Shows the label as near to a symbol as possible, at the worst over other symbols. */
  void near(Label label, double radius) {
    if (!near(label, radius, false)) {
      near(label, radius, true);
    }
  }

  private boolean near(Label label, double radius, boolean overSymbols) {
    for (double distance : DISTANCES) {
      for (int[] side : SIDES) {
        Label moved = besides(label, radius + distance, side);
        if (overSymbols ? placeOverSymbols(moved) : place(moved)) {
          return true;
        }
      }
    }
    return false;
  }

  private static Label besides(Label label, double radius, int[] side) {
    return label.movedTo(
        label.x() + side[0] * (radius + label.width() / 2),
        label.y() + side[1] * (radius + label.height() / 2));
  }

  private static boolean free(Envelope box, Quadtree among) {
    for (Object other : among.query(box)) {
      if (box.intersects((Envelope) other)) {
        return false;
      }
    }
    return true;
  }

  List<Label> placed() {
    return List.copyOf(placed);
  }

  /** All labels with a light rim that keeps them readable on any colour. */
  Markup write() {
    Markup svg = new Markup();
    // Rims first and apart: not every viewer can draw the rim of a text under its fill.
    svg.open(
        "g",
        "text-anchor",
        "middle",
        "fill",
        "none",
        "stroke",
        "#fff",
        "stroke-width",
        3.5,
        "stroke-linejoin",
        "round",
        "aria-hidden",
        "true");
    placed.stream().filter(label -> !label.isFramed()).forEach(label -> label.writeText(svg));
    svg.close("g").open("g", "text-anchor", "middle", "fill", "#111");
    placed.forEach(label -> label.write(svg));
    return svg.close("g");
  }
}
