package dev.fillplane.surface;

import dev.fillplane.room.Opening;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * Places in one room that are read before all others: in its openings, in its corners and along its
 * long walls, a little off the wall. Places in islands, outside or squeezed between walls are left
 * out. How far off and how far apart is common practice, no source.
 */
final class EdgeSpots {

  /** How far off the walls corners and walls are read. */
  static final double OFF_WALL = 0.3;

  /** How far into the room an opening is read. */
  static final double IN_DOORWAY = 0.15;

  /** Walls are read at least this often. */
  static final double WALL_SPACING = 4;

  /** Bends of a wall by less than this are none. */
  private static final double STRAIGHT = 0.05;

  /** A corner turns by more than 30 degrees: sine of that. */
  private static final double LEAST_TURN = 0.5;

  /** A sharp corner is read no further from its tip than this many times {@link #OFF_WALL}. */
  private static final double SHARPEST = 3;

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private final int number;
  private final Polygon polygon;
  private final Geometry walls;
  private final Coordinate[] ring;
  private final List<PlannedSpot> spots = new ArrayList<>();

  private EdgeSpots(int number, Room room) {
    this.number = number;

    polygon = room.outline().polygon();
    walls = polygon.getBoundary();
    ring = counterClockwise(polygon.getExteriorRing());
  }

  /** The places of a room with a valid outline; at least one. */
  static List<PlannedSpot> of(int number, Room room) {
    EdgeSpots edges = new EdgeSpots(number, room);
    room.openings().forEach(edges::opening);
    for (int i = 0; i < edges.ring.length - 1; i++) {
      edges.corner(i);
    }
    for (int i = 0; i < edges.ring.length - 1; i++) {
      edges.wall(edges.ring[i], edges.ring[i + 1]);
    }
    if (edges.spots.isEmpty()) {
      Coordinate inside = edges.polygon.getInteriorPoint().getCoordinate();
      edges.spots.add(new PlannedSpot(inside.x, inside.y, number, SpotReason.INSIDE));
    }
    return edges.spots;
  }

  private static Coordinate[] counterClockwise(LineString shell) {
    Coordinate[] simple = DouglasPeuckerSimplifier.simplify(shell, STRAIGHT).getCoordinates();
    Coordinate[] ring = simple.length < 4 ? shell.getCoordinates() : simple;
    if (!Orientation.isCCW(ring)) {
      Collections.reverse(Arrays.asList(ring));
    }
    return ring;
  }

  private void opening(Opening opening) {
    double width = opening.width();
    if (!(width > 0)) {
      return;
    }
    double x = (opening.from().x() + opening.to().x()) / 2;
    double y = (opening.from().y() + opening.to().y()) / 2;
    double acrossX = (opening.to().y() - opening.from().y()) / width * IN_DOORWAY;
    double acrossY = (opening.from().x() - opening.to().x()) / width * IN_DOORWAY;
    if (!add(x + acrossX, y + acrossY, IN_DOORWAY / 2, SpotReason.DOORWAY)) {
      add(x - acrossX, y - acrossY, IN_DOORWAY / 2, SpotReason.DOORWAY);
    }
  }

  /** On the bisector of a corner that points outward, counter-clockwise a turn to the left. */
  private void corner(int i) {
    Coordinate at = ring[i];
    Coordinate before = ring[i == 0 ? ring.length - 2 : i - 1];
    Coordinate after = ring[i + 1];
    double in = at.distance(before);
    double out = at.distance(after);
    if (!(in > 0 && out > 0)) {
      return;
    }
    double inX = (before.x - at.x) / in;
    double inY = (before.y - at.y) / in;
    double outX = (after.x - at.x) / out;
    double outY = (after.y - at.y) / out;
    double turn = outX * inY - outY * inX;
    boolean sharp = inX * outX + inY * outY > 0;
    double length = Math.hypot(inX + outX, inY + outY);
    if (!(turn > LEAST_TURN || (sharp && turn > 0)) || !(length > 0)) {
      return;
    }
    // The bisector's angle to a wall is half the corner's; its sine by the half-angle formula.
    double sine = Math.sqrt(Math.max(0, (1 - (inX * outX + inY * outY)) / 2));
    double far = Math.min(SHARPEST * OFF_WALL, OFF_WALL / Math.max(1e-9, sine));
    add(
        at.x + (inX + outX) / length * far,
        at.y + (inY + outY) / length * far,
        OFF_WALL / 2,
        SpotReason.CORNER);
  }

  private void wall(Coordinate from, Coordinate to) {
    double length = from.distance(to);
    double open = length - 2 * OFF_WALL;
    int parts = (int) Math.min(1_000, Math.ceil(open / WALL_SPACING - 1e-9));
    for (int k = 1; k < parts; k++) {
      double along = (OFF_WALL + k * open / parts) / length;
      double x = from.x + along * (to.x - from.x) - OFF_WALL * (to.y - from.y) / length;
      double y = from.y + along * (to.y - from.y) + OFF_WALL * (to.x - from.x) / length;
      add(x, y, OFF_WALL / 2, SpotReason.WALL);
    }
  }

  /** Adds a place unless a wall is nearer than {@code clear}. */
  private boolean add(double x, double y, double clear, SpotReason why) {
    Point at = GEOMETRY.createPoint(new Coordinate(x, y));
    boolean fits = polygon.contains(at) && !walls.isWithinDistance(at, clear);
    if (fits) {
      spots.add(new PlannedSpot(x, y, number, why));
    }
    return fits;
  }
}
