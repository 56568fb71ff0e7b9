package dev.fillplane.flatness;

import dev.fillplane.depth.HighParts;
import dev.fillplane.finding.Stopped;
import dev.fillplane.room.Position;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Finds the connected parts of a room whose lattice stands above a height. Heights, areas and
 * volumes are summed over its nodes; outlines are level rings between them, and nodes in the same
 * ring are one part. A sliver along a wall without a node is left out.
 */
final class Humps {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private final Lattice above;
  private final double limit;
  private final boolean[][] seen;
  private final Deque<int[]> open = new ArrayDeque<>();

  private Humps(Lattice above, double limit) {
    this.above = above;
    this.limit = limit;
    this.seen = new boolean[above.lines()][above.columns()];
  }

  /** Nodes that hang together at their four sides. */
  private record Group(Position top, int nodes, double height, double over) {

    Group and(Group other) {
      Group higher = other.height > height ? other : this;
      return new Group(higher.top, nodes + other.nodes, higher.height, over + other.over);
    }
  }

  static List<Hump> of(Lattice above, Polygon room, double limit) {
    Humps humps = new Humps(above, limit);
    List<Group> groups = humps.groups();
    if (groups.isEmpty()) {
      return List.of();
    }
    List<Polygon> parts = HighParts.of(above.carried(), limit, room, above::onPlan);
    TreeMap<Integer, Group> byPart = new TreeMap<>();
    for (Group group : groups) {
      Stopped.ifInterrupted();
      partOf(group.top(), parts).ifPresent(part -> byPart.merge(part, group, Group::and));
    }
    List<Hump> found = new ArrayList<>();
    byPart.forEach((part, group) -> found.add(humps.hump(parts.get(part), group)));
    return found;
  }

  /** The part round a place; rounding may put the place just outside, then the nearest. */
  private static Optional<Integer> partOf(Position top, List<Polygon> parts) {
    Coordinate place = new Coordinate(top.x(), top.y());
    Point point = GEOMETRY.createPoint(place);
    Optional<Integer> nearest = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < parts.size() && least > 0; i++) {
      if (parts.get(i).getEnvelopeInternal().distance(point.getEnvelopeInternal()) < least) {
        double distance = parts.get(i).distance(point);
        nearest = distance < least ? Optional.of(i) : nearest;
        least = Math.min(least, distance);
      }
    }
    return nearest;
  }

  private Hump hump(Polygon part, Group group) {
    double node = above.nodeArea();
    return new Hump(
        group.top().x(),
        group.top().y(),
        HighParts.outline(part),
        group.nodes() * node,
        group.height() - limit,
        group.over() * node);
  }

  private List<Group> groups() {
    List<Group> found = new ArrayList<>();
    above.forEachNode(
        (line, column) -> {
          if (enter(line, column)) {
            found.add(grow());
          }
        });
    return found;
  }

  private boolean enter(int line, int column) {
    boolean isNew =
        line >= 0
            && line < seen.length
            && column >= 0
            && column < seen[line].length
            && !seen[line][column]
            && above.height(line, column) > limit;
    if (isNew) {
      seen[line][column] = true;
      open.add(new int[] {line, column});
    }
    return isNew;
  }

  private Group grow() {
    int[] top = open.getFirst();
    int nodes = 0;
    double over = 0;
    while (!open.isEmpty()) {
      int[] node = open.remove();
      nodes++;
      over += height(node) - limit;
      top = height(node) > height(top) ? node : top;
      enter(node[0] - 1, node[1]);
      enter(node[0] + 1, node[1]);
      enter(node[0], node[1] - 1);
      enter(node[0], node[1] + 1);
    }
    return new Group(above.position(top[0], top[1]), nodes, height(top), over);
  }

  private double height(int[] node) {
    return above.height(node[0], node[1]);
  }
}
