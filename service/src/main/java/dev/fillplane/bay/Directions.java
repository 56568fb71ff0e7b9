package dev.fillplane.bay;

import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * The directions in which a bay may be poured: along and across its longest wall and across every
 * other wall at least half as long, each both ways; those within 1 degree of an earlier one are
 * left out. A wall told in several pieces counts as one.
 */
final class Directions {

  private static final double SAME = Math.cos(Math.toRadians(1));

  private final Position origin;
  private final List<Travel> all = new ArrayList<>();

  private Directions(Position origin) {
    this.origin = origin;
  }

  /** The directions for a room; those of its longest wall first. */
  static List<Travel> of(Polygon room) {
    List<Wall> walls = Wall.longOnes(room);
    Wall longest = walls.get(0);
    Directions directions =
        new Directions(Travel.position(room.getExteriorRing().getCoordinateN(0)));
    directions.addBoth(longest.to().x - longest.from().x, longest.to().y - longest.from().y);
    walls.forEach(w -> directions.addBoth(w.from().y - w.to().y, w.to().x - w.from().x));
    return directions.all;
  }

  private void addBoth(double dx, double dy) {
    add(Travel.toward(origin, dx, dy));
    add(Travel.toward(origin, -dx, -dy));
  }

  private void add(Travel travel) {
    boolean isNew = all.stream().noneMatch(t -> t.x() * travel.x() + t.y() * travel.y() >= SAME);
    if (isNew) {
      all.add(travel);
    }
  }
}
