package dev.fillplane.surface;

import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * The drift of a {@link Step}: half its jump to the left of the infinite line through it, less half
 * to the right. A position on the line, to a millionth of a millimetre, is on the left.
 *
 * <p>Only rooms that the step itself cuts jump; a position is in them if none of the others is
 * nearer. Without rooms it jumps everywhere.
 *
 * @param step longer than 0
 * @param cut rooms that it cuts
 * @param uncut the others
 */
record StepTerm(Step step, List<Polygon> cut, List<Polygon> uncut) {

  private static final double ON_LINE = 1e-9;
  private static final GeometryFactory FACTORY = new GeometryFactory();

  static StepTerm of(Step step, List<Polygon> rooms) {
    LineString line =
        FACTORY.createLineString(new Coordinate[] {coordinate(step.from()), coordinate(step.to())});
    List<Polygon> cut = new ArrayList<>();
    List<Polygon> uncut = new ArrayList<>();
    for (Polygon room : rooms) {
      (room.intersection(line).getLength() > ON_LINE ? cut : uncut).add(room);
    }
    return new StepTerm(step, cut, uncut);
  }

  private static Coordinate coordinate(Position position) {
    return new Coordinate(position.x(), position.y());
  }

  /** The term at a position of the plan. */
  double at(double x, double y) {
    if (!uncut.isEmpty() && !jumps(x, y)) {
      return 0;
    }
    Position from = step.from();
    double across =
        (step.to().x() - from.x()) * (y - from.y()) - (step.to().y() - from.y()) * (x - from.x());
    return across >= -ON_LINE * step.length() ? 0.5 : -0.5;
  }

  private boolean jumps(double x, double y) {
    Point point = FACTORY.createPoint(new Coordinate(x, y));
    return distance(cut, point) <= distance(uncut, point);
  }

  private static double distance(List<Polygon> rooms, Point point) {
    return rooms.stream()
        .mapToDouble(room -> room.distance(point))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
