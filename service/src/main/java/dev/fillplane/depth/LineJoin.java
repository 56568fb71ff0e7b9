package dev.fillplane.depth;

import dev.fillplane.room.Position;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Joins pieces that share an end to lines, in the order in which the pieces came. */
final class LineJoin {

  /** Parts of a cell by which a position may be off the line between its neighbours. */
  private static final double STRAIGHT = 1e-7;

  /** An end of a piece; equal keys are the same end. */
  record End(long key, Position position) {}

  private final List<End[]> pieces = new ArrayList<>();
  private final Map<Long, List<Integer>> piecesAt = new HashMap<>();
  private long looseEnds;

  /** An end that joins no other piece. */
  End loose(Position position) {
    return new End(--looseEnds, position);
  }

  void add(End from, End to) {
    int piece = pieces.size();
    pieces.add(new End[] {from, to});
    piecesAt.computeIfAbsent(from.key(), key -> new ArrayList<>(2)).add(piece);
    piecesAt.computeIfAbsent(to.key(), key -> new ArrayList<>(2)).add(piece);
  }

  /** All lines; a closed one ends where it starts. */
  List<List<Position>> lines(double cell) {
    boolean[] used = new boolean[pieces.size()];
    List<List<Position>> lines = new ArrayList<>();
    for (int i = 0; i < used.length; i++) {
      if (!used[i]) {
        List<Position> line = straightened(follow(i, used), STRAIGHT * cell);
        if (line.size() > 1) {
          lines.add(fromWest(line));
        }
      }
    }
    return lines;
  }

  private List<Position> follow(int first, boolean[] used) {
    Deque<Position> line = new ArrayDeque<>();
    used[first] = true;
    End[] piece = pieces.get(first);
    line.add(piece[0].position());
    line.add(piece[1].position());
    for (End end = next(piece[1], used); end != null; end = next(end, used)) {
      line.addLast(end.position());
    }
    for (End end = next(piece[0], used); end != null; end = next(end, used)) {
      line.addFirst(end.position());
    }
    return new ArrayList<>(line);
  }

  /** The far end of the unused piece at an end, or null. */
  private End next(End end, boolean[] used) {
    for (int piece : piecesAt.get(end.key())) {
      if (!used[piece]) {
        used[piece] = true;
        End[] ends = pieces.get(piece);
        return ends[0].key() == end.key() ? ends[1] : ends[0];
      }
    }
    return null;
  }

  /** Leaves out positions on the straight line between their neighbours, and repeated ones. */
  private static List<Position> straightened(List<Position> line, double tolerance) {
    List<Position> kept = new ArrayList<>();
    for (Position position : line) {
      if (!kept.isEmpty() && kept.get(kept.size() - 1).distance(position) <= tolerance) {
        continue;
      }
      int n = kept.size();
      if (n > 1 && isStraight(kept.get(n - 2), kept.get(n - 1), position, tolerance)) {
        kept.remove(n - 1);
      }
      kept.add(position);
    }
    return kept;
  }

  private static boolean isStraight(Position a, Position b, Position c, double tolerance) {
    double eastward = c.x() - a.x();
    double northward = c.y() - a.y();
    double cross = eastward * (b.y() - a.y()) - northward * (b.x() - a.x());
    double along = eastward * (b.x() - a.x()) + northward * (b.y() - a.y());
    double length = Math.hypot(eastward, northward);
    return length > 0
        && along > 0
        && along < length * length
        && Math.abs(cross) <= tolerance * length;
  }

  /** Turned so that an open line starts at its western (then southern) end. */
  private static List<Position> fromWest(List<Position> line) {
    Position first = line.get(0);
    Position last = line.get(line.size() - 1);
    if (last.x() > first.x() || (last.x() == first.x() && last.y() >= first.y())) {
      return line;
    }
    List<Position> turned = new ArrayList<>(line);
    Collections.reverse(turned);
    return turned;
  }
}
