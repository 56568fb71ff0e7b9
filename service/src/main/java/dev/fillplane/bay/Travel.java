package dev.fillplane.bay;

import dev.fillplane.room.Position;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * The direction in which a bay is poured, with the frame that belongs to it.
 *
 * @param origin where along and across are 0
 * @param x first component of the unit vector of travel
 * @param y second component
 */
public record Travel(Position origin, double x, double y) {

  /** In the direction of ({@code dx}, {@code dy}), which need not have length 1 but some. */
  static Travel toward(Position origin, double dx, double dy) {
    double length = Math.hypot(dx, dy);
    return new Travel(origin, dx / length, dy / length);
  }

  /** How far a position lies in the direction of travel. */
  public double along(Position p) {
    return (p.x() - origin.x()) * x + (p.y() - origin.y()) * y;
  }

  /** How far a position lies to the left of the line of travel. */
  public double across(Position p) {
    return (p.y() - origin.y()) * x - (p.x() - origin.x()) * y;
  }

  /** The position on plan of a place in this frame. */
  public Position at(double along, double across) {
    return new Position(origin.x() + along * x - across * y, origin.y() + along * y + across * x);
  }

  /** Turns geometry on plan into this frame: along becomes x, across becomes y. */
  public AffineTransformation toFrame() {
    return AffineTransformation.translationInstance(-origin.x(), -origin.y())
        .compose(new AffineTransformation(x, y, 0, -y, x, 0));
  }

  /** Turns geometry of this frame back to the plan. */
  public AffineTransformation toPlan() {
    return new AffineTransformation(x, -y, origin.x(), y, x, origin.y());
  }

  static Position position(Coordinate c) {
    return new Position(c.x, c.y);
  }
}
