package dev.fillplane.bay;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Nobody is walled in: pieces that would be cut off from the way out by one that is poured come
 * before it, the farthest of them first.
 */
final class SafeOrder {

  /** Narrower than this nobody steps from one ribbon to another. */
  private static final double WALKABLE = 0.2;

  private final List<Integer> wish;
  private final Touching touching;
  private final IntPredicate atWayOut;
  private final boolean[] poured;
  private final List<Integer> order = new ArrayList<>();

  private SafeOrder(List<Integer> wish, Touching touching, IntPredicate atWayOut) {
    this.wish = wish;
    this.touching = touching;
    this.atWayOut = atWayOut;
    this.poured = new boolean[wish.size()];
  }

  /**
   * The order nearest to a wish.
   *
   * @param wish all pieces
   * @param atWayOut those that are poured from outside
   */
  static List<Integer> of(List<Integer> wish, Touching touching, IntPredicate atWayOut) {
    SafeOrder safe = new SafeOrder(wish, touching, atWayOut);
    wish.forEach(safe::pour);
    return safe.order;
  }

  private void pour(int piece) {
    if (poured[piece]) {
      return;
    }
    boolean[] now = reached(-1);
    boolean[] without = reached(piece);
    for (int other : wish) {
      if (other != piece && now[other] && !without[other]) {
        pour(other);
      }
    }
    poured[piece] = true;
    order.add(piece);
  }

  /** Which pieces that are not poured yet can be walked to from the way out. */
  private boolean[] reached(int without) {
    boolean[] reached = new boolean[poured.length];
    List<Integer> queue = new ArrayList<>();
    for (int piece = 0; piece < poured.length; piece++) {
      if (!poured[piece] && piece != without && atWayOut.test(piece)) {
        reached[piece] = true;
        queue.add(piece);
      }
    }
    for (int i = 0; i < queue.size(); i++) {
      for (Touching.Seam seam : touching.of(queue.get(i))) {
        int next = seam.other();
        boolean walkable = seam.to() - seam.from() >= WALKABLE;
        if (walkable && !poured[next] && next != without && !reached[next]) {
          reached[next] = true;
          queue.add(next);
        }
      }
    }
    return reached;
  }
}
