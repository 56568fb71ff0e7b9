package dev.fillplane.render;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;

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

  private static final double[] DISTANCES = {0, 8, 18, 30, 46, 66};

  /** From here on a line leads from a symbol to its text, px. */
  private static final double FAR = 18;

  private static final int[][] SIDES = {
    {1, 0}, {-1, 0}, {0, -1}, {0, 1}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}
  };

  private final Envelope map;
  private final Obstacles obstacles = new Obstacles();
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
    obstacles.symbol(x, y, radius);
  }

  /** Keeps a line free. */
  void block(Coordinate from, Coordinate to, double radius) {
    obstacles.symbol(from, to, radius);
  }

  /** Keeps a wall clear. */
  void wall(Coordinate from, Coordinate to) {
    obstacles.wall(from, to);
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
            && obstacles.isOffTexts(box)
            && (over == Over.WALLS || obstacles.isOffWalls(box))
            && (over != Over.NOTHING || obstacles.isOffSymbols(box));
    if (free) {
      obstacles.text(box);
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
    List<Label> texts = new ArrayList<>(List.of(label));
    texts.addAll(List.of(shorter));
    for (Over over : List.of(Over.NOTHING, Over.SYMBOLS)) {
      for (Label text : texts) {
        if (near(text, radius, over)) {
          return;
        }
      }
    }
    near(label, radius, Over.WALLS);
  }

  private boolean near(Label label, double radius, Over over) {
    for (double distance : DISTANCES) {
      for (int[] side : SIDES) {
        Label moved = besides(label, radius + distance, side);
        LineSegment lead = lead(label, moved.box(), radius);
        if ((distance < FAR || obstacles.isOffTexts(lead)) && place(moved, over)) {
          if (distance >= FAR) {
            leads.line(lead.p0, lead.p1);
            block(lead.p0, lead.p1, 1);
          }
          return true;
        }
      }
    }
    return false;
  }

  /** From the edge of a symbol to the nearest place of its text. */
  private static LineSegment lead(Label symbol, Envelope text, double radius) {
    Coordinate from = new Coordinate(symbol.x(), symbol.y());
    Coordinate to =
        new Coordinate(
            Math.max(text.getMinX(), Math.min(from.x, text.getMaxX())),
            Math.max(text.getMinY(), Math.min(from.y, text.getMaxY())));
    LineSegment line = new LineSegment(from, to);
    return new LineSegment(line.pointAlong(radius / line.getLength()), to);
  }

  private static Label besides(Label label, double radius, int[] side) {
    return label.movedTo(
        label.x() + side[0] * (radius + label.width() / 2),
        label.y() + side[1] * (radius + label.height() / 2));
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
