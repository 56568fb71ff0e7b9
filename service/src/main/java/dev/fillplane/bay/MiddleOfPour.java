package dev.fillplane.bay;

import dev.fillplane.room.Position;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/**
 * Where the middle of a floor and the middle of what is poured on it lie, from a coarse lattice
 * that turns with the room: good enough to tell which end is deeper.
 *
 * @param floor the middle of the lattice points in the room
 * @param pour the same, weighed by depth; equal to {@code floor} where nothing is poured
 */
record MiddleOfPour(Position floor, Position pour) {

  private static final int POINTS = 12;

  static MiddleOfPour of(Polygon room, Travel frame, PassDepth depth) {
    IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(room);
    Envelope box = frame.toFrame().transform(room).getEnvelopeInternal();
    Sum floor = new Sum();
    Sum pour = new Sum();
    for (int i = 0; i < POINTS; i++) {
      for (int j = 0; j < POINTS; j++) {
        Position p =
            frame.at(
                box.getMinX() + (i + 0.5) / POINTS * box.getWidth(),
                box.getMinY() + (j + 0.5) / POINTS * box.getHeight());
        if (inside.locate(new Coordinate(p.x(), p.y())) == Location.INTERIOR) {
          floor.add(p, 1);
          pour.add(p, Math.max(0, depth.at(p.x(), p.y())));
        }
      }
    }
    Position middle = floor.mean(Travel.position(room.getInteriorPoint().getCoordinate()));
    return new MiddleOfPour(middle, pour.mean(middle));
  }

  private static final class Sum {
    private double weight;
    private double x;
    private double y;

    void add(Position p, double share) {
      weight += share;
      x += share * p.x();
      y += share * p.y();
    }

    Position mean(Position otherwise) {
      return weight > 0 ? new Position(x / weight, y / weight) : otherwise;
    }
  }
}
