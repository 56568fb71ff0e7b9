package dev.fillplane.flatness;

import dev.fillplane.room.Position;
import java.util.OptionalDouble;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * Where the lines of a section may lie, and how many it needs, for their F-numbers to stand for it
 * (ASTM E1155). Published but for the number of differences up to 1,600 ft2, which is from memory;
 * lengths as the metric edition rounds them.
 */
public final class SectionRules {

  /** Least distance of a line from a wall, an island or any other edge: 2 ft. */
  public static final double FROM_EDGE = 0.6;

  /** Least distance of parallel lines: 4 ft. */
  public static final double APART = 1.2;

  /** Least side of a section: 8 ft. */
  public static final double SIDE = 2.4;

  private static final double FOOT = 0.3048;
  private static final double SMALLEST = 320;
  private static final double MIDDLING = 1600;
  private static final double AREA_OF_A_DIFFERENCE = 30;

  /** Lines that turn by less from each other count as parallel, rad; own choice. */
  private static final double PARALLEL = Math.toRadians(5);

  private static final double ROUNDING = 1e-6;

  private SectionRules() {}

  /** The least width of a room, m, in whichever direction. */
  public static double side(Polygon room) {
    return new MinimumDiameter(room).getLength();
  }

  /** How far a line keeps from the edges of a room, m; 0 where it crosses them or lies outside. */
  public static double fromEdge(Polygon room, Position from, Position to) {
    LineString line = segment(from, to).toGeometry(room.getFactory());
    return room.contains(line) ? room.getBoundary().distance(line) : 0;
  }

  /** The distance across between two lines that are parallel and run beside each other, m. */
  public static OptionalDouble apart(
      Position from, Position to, Position otherFrom, Position otherTo) {
    LineSegment line = segment(from, to);
    LineSegment other = segment(otherFrom, otherTo);
    double turn = Math.abs(Math.sin(line.angle() - other.angle()));
    double start = line.projectionFactor(other.p0);
    double end = line.projectionFactor(other.p1);
    boolean beside = Math.max(start, end) > 0 && Math.min(start, end) < 1;
    return turn < Math.sin(PARALLEL) && beside
        ? OptionalDouble.of(line.distancePerpendicular(other.midPoint()))
        : OptionalDouble.empty();
  }

  /** Whether a length is shorter than a rule asks for, by more than rounding. */
  public static boolean isShort(double length, double least) {
    return length < least - ROUNDING;
  }

  /** Differences of height over 10 ft that a section of an area, m2, needs; 0 for a small one. */
  public static int leastDifferences(double area) {
    double squareFeet = area / (FOOT * FOOT) - ROUNDING;
    if (squareFeet < SMALLEST - ROUNDING * 2) {
      return 0;
    }
    return (int)
        Math.ceil(
            squareFeet <= MIDDLING ? 2 * Math.sqrt(squareFeet) : squareFeet / AREA_OF_A_DIFFERENCE);
  }

  private static LineSegment segment(Position from, Position to) {
    return new LineSegment(new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y()));
  }
}
