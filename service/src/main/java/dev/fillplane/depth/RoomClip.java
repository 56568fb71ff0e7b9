package dev.fillplane.depth;

import dev.fillplane.room.Position;
import dev.fillplane.surface.FloorSample;
import java.util.Arrays;
import java.util.List;

/** Clips short pieces of a line to a room. */
final class RoomClip {

  private final FloorSample floor;
  private final int room;
  private final List<List<Position>> rings;

  RoomClip(FloorSample floor, int room) {
    this.floor = floor;
    this.room = room;
    this.rings = floor.rooms().get(room).outline().rings();
  }

  /** The parts of a piece that lie in the room, as pairs of shares of its length from 0 to 1. */
  double[] inside(Position from, Position to) {
    double[] cuts = cuts(from, to);
    double[] parts = new double[2 * cuts.length];
    int n = 0;
    for (int i = 0; i + 1 < cuts.length; i++) {
      double middle = (cuts[i] + cuts[i + 1]) / 2;
      double x = from.x() + middle * (to.x() - from.x());
      double y = from.y() + middle * (to.y() - from.y());
      if (!floor.covers(room, x, y)) {
        continue;
      }
      if (n > 0 && parts[n - 1] == cuts[i]) {
        parts[n - 1] = cuts[i + 1];
      } else {
        parts[n++] = cuts[i];
        parts[n++] = cuts[i + 1];
      }
    }
    return Arrays.copyOf(parts, n);
  }

  /** 0, 1, and between them where the outline is crossed; rising. */
  private double[] cuts(Position from, Position to) {
    double[] cuts = {0, 1};
    for (List<Position> ring : rings) {
      for (int i = 0; i + 1 < ring.size(); i++) {
        double share = crossing(from, to, ring.get(i), ring.get(i + 1));
        if (share > 0 && share < 1) {
          cuts = Arrays.copyOf(cuts, cuts.length + 1);
          cuts[cuts.length - 1] = share;
        }
      }
    }
    Arrays.sort(cuts);
    return cuts;
  }

  /** Where a piece crosses an edge, as a share of its length; -1 where it does not. */
  private static double crossing(Position from, Position to, Position a, Position b) {
    double start = side(a, b, from);
    double end = side(a, b, to);
    if (start > 0 == end > 0 || side(from, to, a) > 0 == side(from, to, b) > 0) {
      return -1;
    }
    return start / (start - end);
  }

  private static double side(Position a, Position b, Position p) {
    return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
  }
}
