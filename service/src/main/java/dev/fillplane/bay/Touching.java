package dev.fillplane.bay;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/** Which pieces of a bay share an edge of more than 1 cm, and where. */
final class Touching {

  private static final double SHORT = 0.01;
  private static final double TOGETHER = 1e-6;

  /** A shared edge with the piece {@code other}, as a range across the travel. */
  record Seam(int other, double from, double to) {}

  private final List<List<Seam>> seams = new ArrayList<>();

  private Touching() {}

  /** Of pieces that stand in the order of their rows. */
  static Touching of(List<Piece> pieces) {
    Touching touching = new Touching();
    pieces.forEach(piece -> touching.seams.add(new ArrayList<>()));
    for (int i = 0; i < pieces.size(); i++) {
      // Two rows apart may touch where a crumb between them was given away.
      for (int j = i + 1; j < pieces.size() && near(pieces.get(i), pieces.get(j)); j++) {
        touching.join(i, j, pieces);
      }
    }
    return touching;
  }

  private static boolean near(Piece a, Piece b) {
    return b.row() - a.row() <= 2;
  }

  private void join(int i, int j, List<Piece> pieces) {
    Piece a = pieces.get(i);
    Piece b = pieces.get(j);
    boolean apart = !a.shape().getEnvelopeInternal().intersects(b.shape().getEnvelopeInternal());
    if (apart) {
      return;
    }
    for (double[] range : ranges(CrossEdges.shared(a.shape(), b.shape()))) {
      if (range[1] - range[0] > SHORT) {
        seams.get(i).add(new Seam(j, range[0], range[1]));
        seams.get(j).add(new Seam(i, range[0], range[1]));
      }
    }
  }

  private static List<double[]> ranges(List<double[]> shared) {
    List<double[]> sorted = new ArrayList<>(shared);
    sorted.sort(Comparator.comparingDouble(range -> range[0]));
    List<double[]> joined = new ArrayList<>();
    for (double[] next : sorted) {
      double[] previous = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (previous != null && next[0] <= previous[1] + TOGETHER) {
        previous[1] = Math.max(previous[1], next[1]);
      } else {
        joined.add(next);
      }
    }
    return joined;
  }

  /** The shared edges of a piece. */
  List<Seam> of(int piece) {
    return seams.get(piece);
  }

  /** Fewest steps over shared edges from a piece to each; -1 where there is no way. */
  int[] stepsFrom(int start) {
    int[] steps = new int[seams.size()];
    Arrays.fill(steps, -1);
    steps[start] = 0;
    Deque<Integer> next = new ArrayDeque<>(List.of(start));
    while (!next.isEmpty()) {
      int piece = next.remove();
      for (Seam seam : seams.get(piece)) {
        if (steps[seam.other()] < 0) {
          steps[seam.other()] = steps[piece] + 1;
          next.add(seam.other());
        }
      }
    }
    return steps;
  }

  /** The largest of {@code values} in each group of touching pieces whose value is positive. */
  int[] largestInGroup(int[] values) {
    int[] largest = new int[values.length];
    for (int i = 0; i < values.length; i++) {
      if (values[i] > 0 && largest[i] == 0) {
        List<Integer> group = group(i, values);
        int most = group.stream().mapToInt(piece -> values[piece]).max().orElse(0);
        group.forEach(piece -> largest[piece] = most);
      }
    }
    return largest;
  }

  private List<Integer> group(int start, int[] values) {
    boolean[] seen = new boolean[values.length];
    seen[start] = true;
    List<Integer> group = new ArrayList<>(List.of(start));
    for (int i = 0; i < group.size(); i++) {
      for (Seam seam : seams.get(group.get(i))) {
        if (values[seam.other()] > 0 && !seen[seam.other()]) {
          seen[seam.other()] = true;
          group.add(seam.other());
        }
      }
    }
    return group;
  }
}
