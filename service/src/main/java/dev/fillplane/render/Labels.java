package dev.fillplane.render;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.RectangleLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.quadtree.Quadtree;

/**
 * Finds room for the texts of a map: first come, first served. No text overlaps another, none
 * leaves the map. Walls and symbols are kept free too; a text that must be shown may cover a symbol
 * where there is no other room, and at the very worst a wall.
 */
final class Labels {

  /** What a text may lie on, the better first. */
  enum Over {
    NOTHING,
    SYMBOLS,
    WALLS
  }

  /** Free between a wall and a text, px. */
  static final double CLEAR = 2;

  /** Free between a text and the next one beside it, px. */
  static final double APART = 4;

  private static final double[] DISTANCES = {0, 8, 18, 30, 46, 66};

  /** From here on a line leads from a symbol to its text, px. */
  private static final double FAR = 18;

  private static final int[][] SIDES = {
    {1, 0}, {-1, 0}, {0, -1}, {0, 1}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}
  };

  private final Envelope map;
  private final Quadtree walls = new Quadtree();
  private final Quadtree symbols = new Quadtree();
  private final Quadtree texts = new Quadtree();
  private final List<Label> placed = new ArrayList<>();
  private final PathData leads = new PathData();

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

  /** Keeps a wall clear. */
  void wall(Coordinate from, Coordinate to) {
    walls.insert(new Envelope(from, to), new LineSegment(from, to));
  }

  /** Shows the label where it is, if there is room. */
  boolean place(Label label) {
    return place(label, Over.NOTHING);
  }

  /** Shows the label where it is, if nothing is there but what it may lie on. */
  boolean place(Label label, Over over) {
    Envelope box = label.box();
    boolean free =
        !label.text().isEmpty()
            && map.covers(box)
            && free(wider(box), texts)
            && (over == Over.WALLS || isOffWalls(box))
            && (over != Over.NOTHING || free(box, symbols));
    if (free) {
      texts.insert(box, box);
      placed.add(label);
    }
    return free;
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

  /**
   * Shows the label as near to a symbol as possible, at the worst over what else is there.
   *
   * @param shorter what may be shown in its place before a wall is covered
   */
  void near(Label label, double radius, Label... shorter) {
    boolean done = near(label, radius, Over.NOTHING) || near(label, radius, Over.SYMBOLS);
    for (int i = 0; i < shorter.length && !done; i++) {
      done = near(shorter[i], radius, Over.NOTHING) || near(shorter[i], radius, Over.SYMBOLS);
    }
    if (!done) {
      near(label, radius, Over.WALLS);
    }
  }

  private boolean near(Label label, double radius, Over over) {
    for (double distance : DISTANCES) {
      for (int[] side : SIDES) {
        Label moved = besides(label, radius + distance, side);
        if (place(moved, over)) {
          if (distance >= FAR) {
            lead(label, moved.box(), radius);
          }
          return true;
        }
      }
    }
    return false;
  }

  /** From the edge of a symbol to the nearest place of its text. */
  private void lead(Label symbol, Envelope text, double radius) {
    Coordinate from = new Coordinate(symbol.x(), symbol.y());
    Coordinate to =
        new Coordinate(
            Math.max(text.getMinX(), Math.min(from.x, text.getMaxX())),
            Math.max(text.getMinY(), Math.min(from.y, text.getMaxY())));
    LineSegment line = new LineSegment(from, to);
    leads.line(line.pointAlong(radius / line.getLength()), to);
  }

  private static Label besides(Label label, double radius, int[] side) {
    return label.movedTo(
        label.x() + side[0] * (radius + label.width() / 2),
        label.y() + side[1] * (radius + label.height() / 2));
  }

  private boolean isOffWalls(Envelope box) {
    Envelope around = new Envelope(box);
    around.expandBy(RoomLayer.WALL / 2 + CLEAR);
    RectangleLineIntersector rectangle = new RectangleLineIntersector(around);
    for (Object wall : walls.query(around)) {
      LineSegment line = (LineSegment) wall;
      if (rectangle.intersects(line.p0, line.p1)) {
        return false;
      }
    }
    return true;
  }

  private static Envelope wider(Envelope box) {
    Envelope wider = new Envelope(box);
    wider.expandBy(APART, 0);
    return wider;
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
    if (!leads.isEmpty()) {
      Symbols.stroke(svg, leads, "#fff", 3);
      Symbols.stroke(svg, leads, "#111", 1);
    }
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
