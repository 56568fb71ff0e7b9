package dev.fillplane.surface;

import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** Tells in which room a position lies. */
final class RoomLocator {

  private final List<IndexedPointInAreaLocator> locators;

  RoomLocator(List<Polygon> rooms) {
    locators = rooms.stream().map(IndexedPointInAreaLocator::new).toList();
  }

  /** The first room in which a position lies, its edge included; -1 if there is none. */
  int room(double x, double y) {
    Coordinate position = new Coordinate(x, y);
    for (int i = 0; i < locators.size(); i++) {
      if (location(i, position) != Location.EXTERIOR) {
        return i;
      }
    }
    return -1;
  }

  /** Where a position lies with respect to one room, as a {@link Location}. */
  int location(int room, Coordinate position) {
    return locators.get(room).locate(position);
  }
}
