package dev.fillplane.render;

import dev.fillplane.room.Opening;
import dev.fillplane.room.Position;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/**
 * An opening on the picture.
 *
 * @param from one end, px
 * @param to the other end, px
 * @param outX unit vector out of the room
 * @param outY the same along y
 */
record Gap(Coordinate from, Coordinate to, double outX, double outY) {

  /** How far out of the room one looks, in widths of the opening. */
  private static final double LOOK = 0.01;

  static Gap of(View view, Polygon room, Opening opening) {
    Position from = opening.from();
    Position to = opening.to();
    double width = Math.max(opening.width(), 1e-9);
    double normalX = (to.y() - from.y()) / width;
    double normalY = (from.x() - to.x()) / width;
    Coordinate beyond =
        new Coordinate(
            (from.x() + to.x()) / 2 + LOOK * width * normalX,
            (from.y() + to.y()) / 2 + LOOK * width * normalY);
    boolean inside = SimplePointInAreaLocator.locate(beyond, room) == Location.INTERIOR;
    double sign = inside ? -1 : 1;
    return new Gap(
        view.at(from.x(), from.y()), view.at(to.x(), to.y()), sign * normalX, -sign * normalY);
  }

  /** A place {@code along} (0 to 1) the opening and so many px out of the room. */
  Coordinate at(double along, double out) {
    return new Coordinate(
        from.x + along * (to.x - from.x) + out * outX,
        from.y + along * (to.y - from.y) + out * outY);
  }

  /** A line along it, so many px out of the room. */
  PathData line(double out) {
    return new PathData().line(at(0, out), at(1, out));
  }
}
