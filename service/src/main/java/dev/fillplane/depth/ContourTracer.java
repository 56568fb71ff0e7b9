package dev.fillplane.depth;

import dev.fillplane.finding.Stopped;
import dev.fillplane.room.Position;
import dev.fillplane.surface.FloorSample;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Follows one depth through the triangles of the sampled floor (marching triangles) and joins the
 * pieces to lines, room by room. A node exactly at the level counts as deeper, so that each
 * triangle holds one piece or none.
 */
final class ContourTracer {

  private static final Comparator<List<Position>> FROM_WEST =
      Comparator.comparingDouble((List<Position> line) -> line.get(0).x())
          .thenComparingDouble(line -> line.get(0).y())
          .thenComparingDouble(line -> line.get(line.size() - 1).x())
          .thenComparingDouble(line -> line.get(line.size() - 1).y())
          .thenComparingInt(List::size);

  private final FloorSample floor;
  private final double[] depths;
  private final double level;
  private final RoomClip clip;
  private final LineJoin join = new LineJoin();

  private ContourTracer(FloorSample floor, double[] depths, double level, RoomClip clip) {
    this.floor = floor;
    this.depths = depths;
    this.level = level;
    this.clip = clip;
  }

  /** All lines of each level; {@code depths} by the number of the node, the levels rising. */
  static List<Contour> trace(FloorSample floor, double[] depths, double[] levels) {
    List<List<List<Position>>> lines = new ArrayList<>();
    for (int i = 0; i < levels.length; i++) {
      lines.add(new ArrayList<>());
    }
    for (int room = 0; room < floor.rooms().size(); room++) {
      Stopped.ifInterrupted();
      ContourTracer[] tracers = tracers(floor, depths, levels, room);
      for (int i = 0; i < tracers.length; i++) {
        lines.get(i).addAll(tracers[i].join.lines(floor.cell()));
      }
    }
    List<Contour> contours = new ArrayList<>();
    for (int i = 0; i < levels.length; i++) {
      lines.get(i).sort(FROM_WEST);
      contours.add(new Contour(levels[i], lines.get(i)));
    }
    return contours;
  }

  /** Having followed each level through all triangles of a room. */
  private static ContourTracer[] tracers(
      FloorSample floor, double[] depths, double[] levels, int room) {
    RoomClip clip = new RoomClip(floor, room);
    ContourTracer[] tracers = new ContourTracer[levels.length];
    Arrays.setAll(tracers, i -> new ContourTracer(floor, depths, levels[i], clip));
    floor.triangles(
        room,
        (first, second, centre, cut) -> {
          double a = depths[first];
          double b = depths[second];
          double c = depths[centre];
          double least = Math.min(a, Math.min(b, c));
          double most = Math.max(a, Math.max(b, c));
          for (int i = 0; i < levels.length && levels[i] <= most; i++) {
            if (levels[i] > least) {
              tracers[i].triangle(first, second, centre, cut);
            }
          }
        });
    return tracers;
  }

  private void triangle(int first, int second, int centre, boolean cut) {
    int[] nodes = {first, second, centre};
    LineJoin.End[] ends = new LineJoin.End[2];
    int n = 0;
    for (int i = 0; i < 3; i++) {
      int from = Math.min(nodes[i], nodes[(i + 1) % 3]);
      int to = Math.max(nodes[i], nodes[(i + 1) % 3]);
      double fromDepth = depths[from] - level;
      double toDepth = depths[to] - level;
      if (isDeep(from) != isDeep(to)) {
        ends[n++] = crossing(from, to, fromDepth / (fromDepth - toDepth));
      }
    }
    if (n == 2) {
      add(ends[0], ends[1], cut);
    }
  }

  private boolean isDeep(int node) {
    return depths[node] >= level;
  }

  /** Counted from the lower node, so that both triangles of an edge find the same position. */
  private LineJoin.End crossing(int from, int to, double share) {
    double x = floor.nodeX(from) + share * (floor.nodeX(to) - floor.nodeX(from));
    double y = floor.nodeY(from) + share * (floor.nodeY(to) - floor.nodeY(from));
    return new LineJoin.End(((long) from << 32) | to, new Position(x, y));
  }

  private void add(LineJoin.End from, LineJoin.End to, boolean cut) {
    if (!cut) {
      join.add(from, to);
      return;
    }
    double[] shares = clip.inside(from.position(), to.position());
    for (int i = 0; i < shares.length; i += 2) {
      LineJoin.End start = shares[i] == 0 ? from : join.loose(between(from, to, shares[i]));
      LineJoin.End end = shares[i + 1] == 1 ? to : join.loose(between(from, to, shares[i + 1]));
      join.add(start, end);
    }
  }

  private static Position between(LineJoin.End from, LineJoin.End to, double share) {
    Position a = from.position();
    Position b = to.position();
    return new Position(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
  }
}
