package dev.fillplane.render;

import dev.fillplane.room.Position;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** Data of an SVG path in px, to a tenth. */
final class PathData {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** How far a line may stray when points are left out. */
  private static final double STRAY = 0.3;

  private final StringBuilder out = new StringBuilder();

  /** A line through points in px. */
  PathData line(Coordinate... points) {
    for (int i = 0; i < points.length; i++) {
      out.append(i == 0 ? 'M' : 'L').append(tenth(points[i].x));
      out.append(' ').append(tenth(points[i].y));
    }
    return this;
  }

  /** A closed line; the last point repeats the first. */
  PathData ring(Coordinate... points) {
    Coordinate[] open = new Coordinate[points.length - 1];
    System.arraycopy(points, 0, open, 0, open.length);
    line(open);
    out.append('Z');
    return this;
  }

  /** A closed line through positions on plan. */
  PathData ring(View view, List<Position> ring) {
    return ring(points(view, ring));
  }

  /** Positions on plan in px. */
  static Coordinate[] points(View view, List<Position> line) {
    return line.stream()
        .map(p -> new Coordinate(view.x(p.x()), view.y(p.y())))
        .toArray(Coordinate[]::new);
  }

  /** The same line without the points that the eye does not miss. */
  static Coordinate[] simple(Coordinate[] points) {
    return points.length < 3
        ? points
        : DouglasPeuckerSimplifier.simplify(GEOMETRY.createLineString(points), STRAY)
            .getCoordinates();
  }

  private static String tenth(double value) {
    return Markup.number(Math.round(value * 10) / 10.0);
  }

  boolean isEmpty() {
    return out.isEmpty();
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
