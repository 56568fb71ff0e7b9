package dev.fillplane.render;

import org.locationtech.jts.algorithm.RectangleLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.quadtree.Quadtree;

/** What is on a map already: walls, symbols and texts, px. */
final class Obstacles {

  /** Free between a wall and a text, px. */
  static final double CLEAR = 2;

  /** Free between a text and the next one beside it, px. */
  private static final double APART = 4;

  private final Quadtree walls = new Quadtree();
  private final Quadtree symbols = new Quadtree();
  private final Quadtree texts = new Quadtree();

  void wall(Coordinate from, Coordinate to) {
    walls.insert(new Envelope(from, to), new LineSegment(from, to));
  }

  void symbol(double x, double y, double radius) {
    Envelope box = new Envelope(x - radius, x + radius, y - radius, y + radius);
    symbols.insert(box, box);
  }

  /** A line as a row of squares. */
  void symbol(Coordinate from, Coordinate to, double radius) {
    int steps = (int) Math.ceil(from.distance(to) / Math.max(4, 2 * radius));
    for (int i = 0; i <= steps; i++) {
      double share = steps == 0 ? 0 : i / (double) steps;
      symbol(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y), radius);
    }
  }

  void text(Envelope box) {
    texts.insert(box, box);
  }

  boolean isOffWalls(Envelope box) {
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

  boolean isOffSymbols(Envelope box) {
    return isOff(box, symbols);
  }

  boolean isOffTexts(Envelope box) {
    Envelope wider = new Envelope(box);
    wider.expandBy(APART, 0);
    return isOff(wider, texts);
  }

  boolean isOffTexts(LineSegment line) {
    for (Object text : texts.query(new Envelope(line.p0, line.p1))) {
      if (new RectangleLineIntersector((Envelope) text).intersects(line.p0, line.p1)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isOff(Envelope box, Quadtree among) {
    for (Object other : among.query(box)) {
      if (box.intersects((Envelope) other)) {
        return false;
      }
    }
    return true;
  }
}
