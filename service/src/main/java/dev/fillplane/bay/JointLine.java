package dev.fillplane.bay;

import dev.fillplane.room.Feature;
import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/**
 * A moving joint where it runs through one room. An end that is drawn up to 5 cm short of the wall
 * reaches it.
 *
 * @param line from wall to wall, or to where the joint ends in the room
 * @param width of the form that stands in it
 * @param fromWall whether it begins at a wall or an island
 * @param toWall whether it ends at one
 */
record JointLine(LineSegment line, double width, boolean fromWall, boolean toWall) {

  /** Width of the form unless told (common practice, no source). */
  static final double USUAL_WIDTH = 0.010;

  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final double SHORT_OF_WALL = 0.05;
  private static final double AT_WALL = 1e-6;
  private static final double SHORTEST = 0.01;

  /** The pieces of a joint in a room; none where it runs through others only. */
  @SuppressWarnings("unchecked")
  static List<JointLine> in(Polygon room, Feature joint) {
    Coordinate from = coordinate(joint.from().orElseThrow());
    Coordinate to = coordinate(joint.to().orElseThrow());
    LineSegment drawn = new LineSegment(from, to);
    double beyond = 2 * SHORT_OF_WALL / drawn.getLength();
    LineSegment reaching =
        new LineSegment(
            near(room, from) ? drawn.pointAlong(-beyond) : from,
            near(room, to) ? drawn.pointAlong(1 + beyond) : to);
    Geometry common = reaching.toGeometry(GEOMETRY).intersection(room);
    List<JointLine> pieces = new ArrayList<>();
    for (LineString piece : (List<LineString>) LinearComponentExtracter.getLines(common)) {
      if (piece.getLength() >= SHORTEST) {
        pieces.add(piece(room, piece, joint.width().orElse(USUAL_WIDTH)));
      }
    }
    return pieces;
  }

  private static JointLine piece(Polygon room, LineString piece, double width) {
    Coordinate from = piece.getCoordinateN(0);
    Coordinate to = piece.getCoordinateN(piece.getNumPoints() - 1);
    return new JointLine(
        new LineSegment(from, to),
        width,
        toWall(room, from) <= AT_WALL,
        toWall(room, to) <= AT_WALL);
  }

  private static boolean near(Polygon room, Coordinate end) {
    return toWall(room, end) <= SHORT_OF_WALL;
  }

  private static double toWall(Polygon room, Coordinate end) {
    Point point = GEOMETRY.createPoint(end);
    return room.getBoundary().distance(point);
  }

  /** Whether it divides what it runs through; else it ends within it. */
  boolean goesThrough() {
    return fromWall && toWall;
  }

  /** The floor that the form takes, a little into the walls where it reaches them. */
  Polygon slit() {
    double length = line.getLength();
    double into = (0.02 + 2 * width) / length;
    LineSegment all =
        new LineSegment(
            line.pointAlong(fromWall ? -into : 0), line.pointAlong(toWall ? 1 + into : 1));
    Coordinate[] ring = {
      all.pointAlongOffset(0, width / 2),
      all.pointAlongOffset(0, -width / 2),
      all.pointAlongOffset(1, -width / 2),
      all.pointAlongOffset(1, width / 2),
      all.pointAlongOffset(0, width / 2)
    };
    return GEOMETRY.createPolygon(ring);
  }

  /** A line beside it, on the left or on the right, just clear of the form. */
  LineString beside(boolean left) {
    double off = (left ? 1 : -1) * (width / 2 + 0.002);
    return GEOMETRY.createLineString(
        new Coordinate[] {line.pointAlongOffset(0, off), line.pointAlongOffset(1, off)});
  }

  /** A line feature from end to end. */
  static LineString between(Feature line) {
    return GEOMETRY.createLineString(
        new Coordinate[] {
          coordinate(line.from().orElseThrow()), coordinate(line.to().orElseThrow())
        });
  }

  static Coordinate coordinate(Position p) {
    return new Coordinate(p.x(), p.y());
  }
}
