package dev.fillplane.flatness;

import dev.fillplane.room.Position;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Finds the connected parts of a lattice that stand above a height; nodes touch at four sides. */
final class Humps {

  private final Lattice above;
  private final double limit;
  private final boolean[][] seen;
  private final Deque<int[]> open = new ArrayDeque<>();

  private Humps(Lattice above, double limit) {
    this.above = above;
    this.limit = limit;
    this.seen = new boolean[above.lines()][above.columns()];
  }

  static List<Hump> of(Lattice above, double limit) {
    Humps humps = new Humps(above, limit);
    List<Hump> found = new ArrayList<>();
    above.forEachNode(
        (line, column) -> {
          if (humps.enter(line, column)) {
            found.add(humps.grow());
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

  private Hump grow() {
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
    Position place = above.position(top[0], top[1]);
    double node = above.nodeArea();
    return new Hump(place.x(), place.y(), nodes * node, height(top) - limit, over * node);
  }

  private double height(int[] node) {
    return above.height(node[0], node[1]);
  }
}
